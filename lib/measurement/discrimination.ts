import { correlation, mean } from './spread';

/** People by items: what each earned of each item, as a share 0–1 or in points. */
export type ScoreTable = readonly (readonly number[])[];

const sum = (values: readonly number[]): number =>
  values.reduce((total, value) => total + value, 0);

export const totals = (table: ScoreTable): number[] => table.map(sum);
export const column = (table: ScoreTable, item: number): number[] =>
  table.map((row) => row[item] ?? 0);

/** Share of what could be earned that was: p of right-or-wrong items, the mean share of others. 0–1. */
export const difficulty = (scores: readonly number[], possible = 1): number =>
  mean(scores) / possible;

/**
 * How an item goes with the rest of the work: r between it and all others, itself left out. In
 * [−1, 1]; null where all earned the same of the item or of the rest.
 */
export function itemRest(table: ScoreTable, item: number): number | null {
  const scores = column(table, item);
  const all = totals(table);
  return correlation(
    scores,
    all.map((total, person) => total - (scores[person] ?? 0)),
  );
}

/** The same with the item in the total: flatters an item of a short test, and is given beside. */
export const itemTotal = (table: ScoreTable, item: number): number | null =>
  correlation(column(table, item), totals(table));

/** T. L. Kelley, Journal of Educational Psychology 30 (1939) 17. */
const kelleyShare = 0.27;

/**
 * How many of a group of that size each person stands for, from the highest total down: those who tie
 * at the edge share what is left of it, so that no order of names decides. They sum to `share` × n.
 */
export function membership(all: readonly number[], share: number): number[] {
  const size = share * all.length;
  const ranks = new Map<number, { above: number; alike: number }>();
  all
    .toSorted((one, other) => other - one)
    .forEach((total, above) => {
      const there = ranks.get(total);
      if (there === undefined) ranks.set(total, { above, alike: 1 });
      else there.alike += 1;
    });
  return all.map((total) => {
    const { above, alike } = ranks.get(total) ?? { above: NaN, alike: NaN };
    return Math.max(0, Math.min(1, (size - above) / alike));
  });
}

/**
 * An item's mean in the upper 27 % by total less that in the lower 27 %, in the item's own unit; of
 * right-or-wrong items in [−1, 1]. Ties at the edge of a group are shared fractionally. NaN of nobody.
 */
export function upperLower(scores: readonly number[], all: readonly number[]): number {
  const upper = membership(all, kelleyShare);
  const lower = membership(
    all.map((total) => -total),
    kelleyShare,
  );
  const size = kelleyShare * all.length;
  const within = (group: readonly number[]): number =>
    sum(scores.map((score, person) => score * (group[person] ?? 0))) / size;
  return within(upper) - within(lower);
}
