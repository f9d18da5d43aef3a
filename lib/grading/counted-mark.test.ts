import { describe, expect, test } from 'vitest';
import { afterPenalty, countedMark } from './counted-mark';

const attempts = [
  { raw: 60, latePenalty: 0, gateFailed: false },
  { raw: 90, latePenalty: 0.4, gateFailed: false },
  { raw: 58, latePenalty: 0, gateFailed: false },
];

test('best compares what is left after lateness', () => {
  // 90 less 40 % is 54.
  expect(countedMark(attempts, 'best')).toEqual({
    mark: 60,
    raw: 60,
    latePenalty: 0,
    gateFailed: false,
    attempt: attempts[0],
  });
});

test('first and last go by the order of the attempts', () => {
  expect(countedMark(attempts, 'first')).toMatchObject({ mark: 60, attempt: attempts[0] });
  expect(countedMark(attempts, 'last')).toMatchObject({ mark: 58, attempt: attempts[2] });
});

test('the average is of the marks after lateness, and its last attempt stands for it', () => {
  expect(countedMark(attempts, 'average')).toEqual({
    mark: 57.333333333,
    attempt: attempts[2],
    raw: null,
    latePenalty: null,
    gateFailed: false,
  });
});

describe('a failed gate', () => {
  const failed = { raw: 95, latePenalty: 0, gateFailed: true };
  const passed = { raw: 40, latePenalty: 0, gateFailed: false };

  test('is worse than any mark where the best counts', () => {
    expect(countedMark([failed, passed], 'best')).toMatchObject({ mark: 40, gateFailed: false });
    expect(countedMark([passed, failed], 'best')).toMatchObject({ mark: 40, gateFailed: false });
    expect(countedMark([failed], 'best')).toMatchObject({ mark: 95, gateFailed: true });
  });

  test('goes with its attempt, and with every average that it is part of', () => {
    expect(countedMark([failed, passed], 'first')?.gateFailed).toBe(true);
    expect(countedMark([failed, passed], 'last')?.gateFailed).toBe(false);
    expect(countedMark([failed, passed], 'average')?.gateFailed).toBe(true);
    expect(countedMark([passed, passed], 'average')?.gateFailed).toBe(false);
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
  const late = { raw, latePenalty: perDay * days, gateFailed: false };
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
