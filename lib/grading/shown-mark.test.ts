import { expect, it } from 'vitest';
import { shownMark } from './shown-mark';

// Half up on the decimal, by hand; never up to a whole number.
it.each([
  [68.05, 68.1],
  [87.1429, 87.1],
  [69.97, 69.9],
  [99.95, 99.9],
  [100, 100],
  // A sum that is nothing on paper: written 5e-15, which is no number with "e1" after it.
  [5e-15, 0],
  [0, 0],
])('%f is shown as %f', (mark, shown) => {
  expect(shownMark(mark)).toBe(shown);
});
