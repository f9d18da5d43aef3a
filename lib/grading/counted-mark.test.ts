import { expect, test } from 'vitest';
import { countedMark } from './counted-mark';

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
    mark: (60 + 54 + 58) / 3,
    raw: null,
    latePenalty: null,
  });
});

test('no attempt, no mark', () => {
  expect(countedMark([], 'average')).toBeNull();
});
