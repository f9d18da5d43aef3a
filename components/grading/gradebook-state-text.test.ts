import { expect, it } from 'vitest';
import { markText } from './gradebook-state-text';

it.each([
  [68, '68'],
  [68.5, '69'],
  [68.49, '68'],
  // 1.005 · 100 is 100.49999999999999 in binary; on the decimal it is 100.5.
  [1.005 * 100, '101'],
  [0, '0'],
])('a mark of %d is shown as %s', (mark, text) => {
  expect(markText(mark)).toBe(text);
});
