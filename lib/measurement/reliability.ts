import { column, totals, type ScoreTable } from './discrimination';
import { hasSpread, mean, populationVariance } from './spread';

const sum = (values: readonly number[]): number =>
  values.reduce((total, value) => total + value, 0);

const itemCount = (table: ScoreTable): number => table[0]?.length ?? 0;

/** Two items at least, and totals that differ: else nothing can be said, and it is null. */
const canBeSaid = (table: ScoreTable): boolean => itemCount(table) > 1 && hasSpread(totals(table));

/**
 * Cronbach's α of people by items, part marks too: the share of the spread of totals that another set
 * of such items would show again. At most 1, and below 0 where the items speak against each other.
 * L. J. Cronbach, Psychometrika 16 (1951) 297.
 */
export function alpha(table: ScoreTable): number | null {
  if (!canBeSaid(table)) return null;
  const k = itemCount(table);
  const within = sum(
    Array.from({ length: k }, (_, item) => populationVariance(column(table, item))),
  );
  return (k / (k - 1)) * (1 - within / populationVariance(totals(table)));
}

/**
 * α where every item is right or wrong: Kuder and Richardson's formula 20, with p(1 − p) for an item.
 * The totals' variance must be over n like it: n − 1 gives .7378 for .6963 on Wuensch's data.
 */
export function kr20(table: ScoreTable): number | null {
  if (!canBeSaid(table)) return null;
  const k = itemCount(table);
  const pq = Array.from({ length: k }, (_, item) => {
    const p = mean(column(table, item));
    return p * (1 - p);
  });
  return (k / (k - 1)) * (1 - sum(pq) / populationVariance(totals(table)));
}

/** Their formula 21: as if all items were equally hard, and so never above 20. */
export function kr21(table: ScoreTable): number | null {
  if (!canBeSaid(table)) return null;
  const k = itemCount(table);
  const all = totals(table);
  const middle = mean(all);
  return (k / (k - 1)) * (1 - (middle * (k - middle)) / (k * populationVariance(all)));
}

export const isRightOrWrong = (table: ScoreTable): boolean =>
  table.every((row) => row.every((score) => score === 0 || score === 1));

/**
 * The same question where everybody had items of their own, as many each: what differs between the
 * items cannot be told from what differs between answers, and counts as error. (Items nested in
 * persons: R. L. Brennan, Generalizability Theory, 2001, ch. 4; the intraclass correlation (1, k) of
 * Shrout and Fleiss 1979.)
 */
export function reliabilityOfOwnItems(table: ScoreTable): number | null {
  const k = itemCount(table);
  const people = table.length;
  const means = table.map(mean);
  if (k < 2 || !hasSpread(means)) return null;
  const between = (k * people * populationVariance(means)) / (people - 1);
  const within = mean(table.map((row) => (populationVariance(row) * k) / (k - 1)));
  return 1 - within / between;
}

/**
 * Standard error of measurement: by how much a total would differ from one set of items to the next,
 * in the totals' unit. Below 0 a reliability promises nothing, and the error is the whole spread.
 */
export const standardErrorOfMeasurement = (deviation: number, reliability: number): number =>
  deviation * Math.sqrt(1 - Math.max(0, reliability));
