import { shownMark } from '../../lib/grading/shown-mark';

/** A mark as it is written on a page: one decimal where there is one. */
export function markText(mark: number): string {
  const shown = shownMark(mark);
  return Number.isInteger(shown) ? String(shown) : shown.toFixed(1);
}
