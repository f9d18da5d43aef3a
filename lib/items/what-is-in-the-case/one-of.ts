import type { Random } from '../../variants/random';

/** One of a list that is never empty. */
export function oneOf<const T>(random: Random, list: readonly [T, ...T[]]): T {
  return random.pick(list) ?? list[0];
}

/** So many of them, in a drawn order. */
export const someOf = <T>(random: Random, list: readonly T[], count: number): T[] =>
  random.shuffle(list).slice(0, count);

/** Who asks, so that no two learners read the same sentence. */
export const askers = [
  'Your partner',
  'A new member of the club',
  'A younger student',
  'A visitor at the open evening',
  'Somebody at the next table',
  'Your neighbour in class',
  'The smallest in the group',
  'A friend from another class',
] as const;
