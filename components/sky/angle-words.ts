/** What is met before the first ′ of a page: the unit, and something everybody has seen to hold it against. */
export const arcminuteInWords =
  '1′, an arcminute, is a sixtieth of a degree; the Moon is about 30′ across.';

const inDegrees = (arcmin: number): string => `${(Math.abs(arcmin) / 60).toFixed(1)}°`;

/** Whether an angle is told in degrees: from one degree up, and where rounding makes one of it. */
const isWide = (arcmin: number): boolean => Math.round(Math.abs(arcmin)) >= 60;

/** An angle by itself: "3.2°" from one degree up, else "4′"; below an arcminute "0.4′". */
export function angleInWords(arcmin: number): string {
  if (isWide(arcmin)) return inDegrees(arcmin);
  const size = Math.abs(arcmin);
  if (size < 0.05) return 'less than 0.1′';
  return `${size.toFixed(size < 0.95 ? 1 : 0)}′`;
}

/**
 * How to tell angles that stand in one line and are compared there: all of them in degrees as soon as
 * one is a degree wide.
 */
export const angleWordsFor = (...arcmins: readonly number[]): ((arcmin: number) => string) =>
  arcmins.some(isWide) ? degreesOrLess : angleInWords;

const degreesOrLess = (arcmin: number): string =>
  Math.abs(arcmin) < 3 ? 'less than 0.1°' : inDegrees(arcmin);
