/**
 * A mark as it is shown, the same on every page: one decimal where there is one, rounded half up on
 * the decimal. A mark just below a whole number never reads as that number: 69.97 shown as 70 would
 * seem to have reached a pass mark of 70. What is stored is not rounded.
 */
export function markText(mark: number): string {
  // Ten decimals away from the binary fraction first: 68.25 must not read 68.2.
  const tenths = Number((mark * 10).toFixed(9));
  const rounded = Math.floor(tenths + 0.5);
  const shown = rounded % 10 === 0 && rounded > tenths ? rounded - 1 : rounded;
  return shown % 10 === 0 ? String(shown / 10) : (shown / 10).toFixed(1);
}
