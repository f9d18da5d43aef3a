import { expect, test } from 'vitest';
import { identity } from '@/lib/units/matrix';
import { allowedInWords, centringTask, declinationInWords, outcomeInWords } from './run-words';

const model = { base: identity, altitudeZeroDeg: 0.2 };

test('what a compass cannot show is not told of it', () => {
  expect(declinationInWords(-0.1, 54)).toMatch(/points to true north/);
  expect(declinationInWords(0.7, 54)).toMatch(/about 1° east of true north/);
  expect(declinationInWords(-7.46, 54)).toMatch(/7\.5° west of true north/);
});

test('nobody is sent to a pole star that never rises', () => {
  expect(declinationInWords(23.3, -41.3)).toMatch(/pole star never rises here/);
  expect(declinationInWords(2, 51)).toMatch(/pole star shows true north/);
  expect(declinationInWords(2, 4)).not.toMatch(/pole star/);
});

test('one line tells how far off level tube and base stand in one unit', () => {
  const outcome = { kind: 'agree', model, mismatchArcmin: 0, baseTiltDeg: 1.4 } as const;
  const { text } = outcomeInWords(outcome, 'solved-zero');
  expect(text).toMatch(/tube stood 0\.2° off level/);
  expect(text).toMatch(/base would stand 1\.4° off level/);
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

test('half as much time again is told as one says it', () => {
  expect(allowedInWords(11)).toBe('full marks for time up to 11 minutes');
  expect(allowedInWords(11 * 1.5)).toBe('full marks for time up to 16½ minutes');
  expect(allowedInWords(11 * 1.25)).toBe('full marks for time up to 13¾ minutes');
});
