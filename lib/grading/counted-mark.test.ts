import { expect, test } from 'vitest';
import { afterPenalty, countedMark } from './counted-mark';

const attempts = [
  { raw: 60, latePenalty: 0 },
  { raw: 90, latePenalty: 0.4 },
  { raw: 58, latePenalty: 0 },
];

test('best compares what is left after lateness', () => {
  // 90 less 40 % is 54.
  expect(countedMark(attempts, 'best')).toEqual({ mark: 60, raw: 60, latePenalty: 0 });
});

test('first and last go by the order of the attempts', () => {
  expect(countedMark(attempts, 'first')?.mark).toBe(60);
  expect(countedMark(attempts, 'last')?.mark).toBe(58);
});

test('the average is of the marks after lateness and belongs to no single attempt', () => {
  expect(countedMark(attempts, 'average')).toEqual({
    mark: 57.333333333,
    raw: null,
    latePenalty: null,
  });
});

test('no attempt, no mark', () => {
  expect(countedMark([], 'average')).toBeNull();
});

test.each([
  // As latePenalty makes the shares: days × share, itself with its noise.
  [100, 0.05, 7, 65],
  [90, 0.1, 3, 63],
])('%d less %d a day for %d days is exactly %d', (raw, perDay, days, left) => {
  const late = { raw, latePenalty: perDay * days };
  expect(raw * (1 - perDay * days)).not.toBe(left);
  expect(afterPenalty(late)).toBe(left);
  for (const rule of ['best', 'last', 'first', 'average'] as const) {
    expect(countedMark([late], rule)?.mark).toBe(left);
    expect(countedMark([late, late, late], rule)?.mark).toBe(left);
  }
});

test('what differs by more than noise stays apart', () => {
  expect(afterPenalty({ raw: 64.9999999, latePenalty: 0 })).toBeLessThan(65);
});
