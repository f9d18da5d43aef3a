import { expect, test } from 'vitest';
import { identity } from '@/lib/units/matrix';
import { angleInWords, centringTask, outcomeInWords } from './run-words';

const model = { base: identity, altitudeZeroDeg: 0.2 };

test('angles are told in minutes of arc below a degree and in degrees above', () => {
  expect(angleInWords(4.2)).toBe('4′');
  expect(angleInWords(-0.44)).toBe('0.4′');
  expect(angleInWords(192)).toBe('3.2°');
});

test('the result is told in the words of the trade', () => {
  const title = (outcome: Parameters<typeof outcomeInWords>[0]): string =>
    outcomeInWords(outcome, 'fixed-zero').title;
  expect(title({ kind: 'agree', model, mismatchArcmin: -4.1, baseTiltDeg: 0.4 })).toBe(
    'These two agree to 4′',
  );
  expect(title({ kind: 'disagree', mismatchArcmin: 192 })).toBe('These two disagree by 3.2°');
  expect(title({ kind: 'base-on-its-side', baseTiltDeg: 40, mismatchArcmin: 1 })).toBe(
    'The base would lie on its side: are the two stars swapped?',
  );
});

test('a computer that solves for the zero says that two stars prove little', () => {
  const outcome = { kind: 'agree', model, mismatchArcmin: 0, baseTiltDeg: 0.4 } as const;
  expect(outcomeInWords(outcome, 'solved-zero').text).toMatch(/only a third one can tell/);
  expect(outcomeInWords(outcome, 'fixed-zero').text).not.toMatch(/third/);
});

test('a mount that drives is not said to have stopped', () => {
  expect(centringTask(false)).toMatch(/has stopped/);
  expect(centringTask(true)).not.toMatch(/stopped/);
});
