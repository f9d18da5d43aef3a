import fc from 'fast-check';
import { expect, test } from 'vitest';
import { rockerPlace, rockerStep, rockerSteps } from './rocker-speed';

test('the middle of a strip stands still, its end is the fastest, and beyond it as well', () => {
  expect(rockerStep(0, 80, 0)).toBe(0);
  expect(rockerStep(7, 80, 0)).toBe(0);
  expect(rockerStep(80, 80, 0)).toBe(5);
  expect(rockerStep(-80, 80, 0)).toBe(-5);
  expect(rockerStep(500, 80, 0)).toBe(5);
});

test('five speeds follow one another from the middle outwards', () => {
  const seen = Array.from({ length: 81 }, (_, offset) => rockerStep(offset, 80, 0));
  expect([...new Set(seen)]).toEqual([0, 1, 2, 3, 4, 5]);
  expect(seen).toEqual([...seen].sort((a, b) => a - b));
});

test('a press where a step is drawn gives that step, on both sides', () => {
  for (let step = -rockerSteps; step <= rockerSteps; step += 1)
    expect(rockerStep(rockerPlace(step) * 80, 80, 0)).toBe(step);
});

test('left and right are alike, whatever came before', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.001, max: 120, noNaN: true }),
      fc.integer({ min: -5, max: 5 }),
      (offset, before) => {
        const right = rockerStep(offset, 80, before);
        const left = rockerStep(-offset, 80, before === 0 ? 0 : -before);
        expect(left + right).toBe(0);
      },
    ),
  );
});

test('a thumb that trembles on the edge between two steps changes nothing', () => {
  // The edge between steps 2 and 3 lies at 0.1 + 0.9 · 2/5 = 0.46 of the half.
  const edge = 0.46 * 80;
  expect(rockerStep(edge + 1, 80, 2)).toBe(2);
  expect(rockerStep(edge - 1, 80, 3)).toBe(3);
  expect(rockerStep(edge + 4, 80, 2)).toBe(3);
  expect(rockerStep(edge - 4, 80, 3)).toBe(2);
});

test('taken back over the middle it turns round', () => {
  expect(rockerStep(-40, 80, 3)).toBe(-3);
});
