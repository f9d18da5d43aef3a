import type { Random } from '../variants/random';

/** One of a list that cannot be empty. */
export const pickOne = <T>(random: Random, items: readonly [T, ...T[]]): T =>
  random.pick(items) ?? items[0];

/** Some of a list, in chance order. */
export const pickSome = <T>(random: Random, items: readonly T[], count: number): T[] =>
  random.shuffle(items).slice(0, count);
