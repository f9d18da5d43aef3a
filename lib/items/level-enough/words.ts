import type { Random } from '../../variants/random';

/** One of a list; @throws {RangeError} for an empty one. */
export function one<T>(random: Random, of: readonly T[]): T {
  const index = random.integer(0, of.length - 1);
  const found = of[index];
  if (found === undefined) throw new RangeError('nothing can be picked from an empty list');
  return found;
}

/** A number as it is written in a sentence: at most so many decimals, a true minus, no minus nought. */
export const figures = (value: number, decimals = 0): string =>
  String(Number(value.toFixed(decimals)) + 0).replace('-', '−');

/** A direction in the vial as on a clock's face, 12 at the top; to half an hour, which is 15°. */
export function clockWords(clockwiseDeg: number): string {
  const halves = ((Math.round(clockwiseDeg / 15) % 24) + 24) % 24;
  const hour = Math.floor(halves / 2) === 0 ? 12 : Math.floor(halves / 2);
  return halves % 2 === 0 ? `${String(hour)} o’clock` : `half past ${String(hour)}`;
}

/** Where a telescope is set up, so that no two questions read alike. */
export const grounds = [
  'in the school yard',
  'on the sports field',
  'on a sloping meadow',
  'behind the library',
  'on a gravel path',
  'on the village green',
] as const;
