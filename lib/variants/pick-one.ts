import type { Random } from './random';

/** One of a list. @throws {RangeError} for an empty one: a family with nothing to choose from is a bug. */
export function pickOne<const T>(random: Random, items: readonly T[]): T {
  const picked = random.pick(items);
  if (picked === undefined) throw new RangeError('there is nothing to choose from');
  return picked;
}

/** Some of a list, in chance order. */
export const pickSome = <T>(random: Random, items: readonly T[], count: number): T[] =>
  random.shuffle(items).slice(0, count);
