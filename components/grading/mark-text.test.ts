import fc from 'fast-check';
import { expect, it } from 'vitest';
import { markText } from './mark-text';

it.each([
  [68, '68'],
  [68.5, '68.5'],
  [68.449, '68.4'],
  // 1.005 · 50 is 50.249999999999993 in binary; on the decimal it is 50.25.
  [1.005 * 50, '50.3'],
  // The sum of marks that are whole on paper.
  [25 + 15 + 30.000000000000004, '70'],
  [69.97, '69.9'],
  [99.99, '99.9'],
  [0, '0'],
  [0.04, '0'],
])('a mark of %d is shown as %s', (mark, text) => {
  expect(markText(mark)).toBe(text);
});

it('rounds half up on the decimal, reckoned in whole hundredths, and never up to a whole number', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 10_000 }), (hundredths) => {
      const tenths = Math.floor((hundredths + 5) / 10);
      const upToWhole = tenths % 10 === 0 && tenths * 10 > hundredths;
      expect(Number(markText(hundredths / 100)) * 10).toBeCloseTo(
        upToWhole ? tenths - 1 : tenths,
        9,
      );
    }),
  );
});
