import { describe, expect, test } from 'vitest';
import { latePenalty } from './late-penalty';

const hour = 3_600_000;
const policy = { dueAtMs: 0, graceMinutes: 15, penaltyPerDay: 0.1, cap: 0.5 };
const lateBy = (hours: number) => latePenalty({ ...policy, submittedAtMs: hours * hour });

test('85 raw, 25 h late, 15 min grace, 10 % a day, cap 50 % make 68.0', () => {
  // Worked example of the grading rules: ⌈24.75 h / 24 h⌉ = 2 days, factor 0.8.
  const { late, share } = lateBy(25);
  expect(late).toBe(true);
  expect(85 * (1 - share)).toBeCloseTo(68, 10);
});

describe('the days are counted from the end of the grace', () => {
  test.each([
    [-1, false, 0],
    [0, false, 0],
    [0.25, false, 0],
    [0.251, true, 0.1],
    [24.25, true, 0.1],
    [24.251, true, 0.2],
    [96.25, true, 0.4],
    [400, true, 0.5],
  ])('%f h after the due time: late %s, share %f', (hours, late, share) => {
    expect(lateBy(hours).late).toBe(late);
    expect(lateBy(hours).share).toBeCloseTo(share, 12);
  });
});

test('without a due time nothing is late', () => {
  expect(latePenalty({ ...policy, dueAtMs: null, submittedAtMs: 1e15 })).toEqual({
    late: false,
    share: 0,
  });
});
