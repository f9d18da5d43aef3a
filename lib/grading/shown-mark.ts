import { withoutNoise } from './counted-mark';

/**
 * A mark as it is shown, the same on every page and in every file: to one decimal, rounded half up on
 * the decimal. A mark just below a whole number never reads as that number: 69.97 shown as 70 would seem
 * to have reached a pass mark of 70. What is stored is not rounded.
 */
export function shownMark(mark: number): number {
  // Off the binary fraction first: 68.25 must not read 68.2.
  const tenths = withoutNoise(mark * 10);
  const rounded = Math.floor(tenths + 0.5);
  return (rounded % 10 === 0 && rounded > tenths ? rounded - 1 : rounded) / 10;
}
