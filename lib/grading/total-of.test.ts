import fc from 'fast-check';
import { expect, test } from 'vitest';
import { totalOf } from './total-of';

test('the parts of a hundred come to a hundred, in whatever order and however they were cut', () => {
  const cuts = fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), {
    minLength: 1,
    maxLength: 12,
  });
  fc.assert(
    fc.property(cuts, (shares) => {
      const sum = shares.reduce((all, share) => all + share, 0);
      expect(totalOf(shares.map((share) => ({ earned: (100 * share) / sum })))).toBe(100);
    }),
  );
  // What plain adding makes of a tenth ten times over, in binary fractions (IEEE 754).
  const tenths = Array.from({ length: 10 }, () => 0.1);
  expect(tenths.reduce((sum, share) => sum + share, 0)).not.toBe(1);
  expect(totalOf(tenths.map((earned) => ({ earned })))).toBe(1);
});

test('a difference that a teacher could mean is kept', () => {
  expect(totalOf([{ earned: 69.97 }, { earned: 0 }])).toBe(69.97);
  expect(totalOf([])).toBe(0);
});
