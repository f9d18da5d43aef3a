/** How often the first rater gave the row's rating where the second gave the column's; square, whole counts. */
export type RatingTable = readonly (readonly number[])[];

export type Agreement = {
  /** How many things both have rated. */
  pairs: number;
  /** Share of them that both rated alike, 0–1. */
  observed: number;
  /** Share alike that two raters of these habits would reach without looking, 0–1. */
  byChance: number;
  /** Cohen's κ: what was reached beyond chance, of what could be; null when chance alone agrees always. */
  kappa: number | null;
  /** The same with every disagreement weighted; null as above. */
  weighted: number | null;
  /** Prevalence- and bias-adjusted κ: κ if every rating were as common as every other. */
  pabak: number;
};

/** What a disagreement costs, by row and column; 0 where the two agree. */
type Weights = readonly (readonly number[])[];

const sum = (values: readonly number[]): number => values.reduce((total, one) => total + one, 0);

const squareOf = (size: number, at: (row: number, column: number) => number): Weights =>
  Array.from({ length: size }, (_, row) =>
    Array.from({ length: size }, (_, column) => at(row, column)),
  );

/** Two levels apart costs four times what one does: for ratings that stand in order. */
const quadratic = (size: number): Weights => squareOf(size, (row, column) => (row - column) ** 2);
const allAlike = (size: number): Weights =>
  squareOf(size, (row, column) => (row === column ? 0 : 1));

/** 1 − observed disagreement / disagreement by chance; null when chance leaves nothing to disagree on. */
function kappaOf(table: RatingTable, weights: Weights): number | null {
  const rows = table.map(sum);
  const columns = table.map((_, column) => sum(table.map((row) => row[column] ?? 0)));
  const pairs = sum(rows);
  let found = 0;
  let byChance = 0;
  weights.forEach((row, i) => {
    row.forEach((weight, j) => {
      found += weight * (table[i]?.[j] ?? 0);
      byChance += weight * (rows[i] ?? 0) * (columns[j] ?? 0);
    });
  });
  return byChance === 0 ? null : 1 - (found * pairs) / byChance;
}

/**
 * How far two raters agree; null when they have nothing in common. κ falls to .29 at 92 % agreement
 * when nearly everyone passes: show it beside the plain share, never alone.
 *
 * J. Cohen, Educational and Psychological Measurement 20 (1960) 37 and Psychological Bulletin 70 (1968)
 * 213; PABAK: T. Byrt, J. Bishop, J. Carlin, Journal of Clinical Epidemiology 46 (1993) 423.
 *
 * @throws when the table is not square.
 */
export function agreement(
  table: RatingTable,
  weights: Weights = quadratic(table.length),
): Agreement | null {
  const size = table.length;
  if (table.some((row) => row.length !== size)) throw new Error('A table of ratings is square.');
  const pairs = sum(table.map(sum));
  if (pairs === 0) return null;
  const observed = sum(table.map((row, index) => row[index] ?? 0)) / pairs;
  const byChance =
    sum(table.map((row, index) => sum(row) * sum(table.map((other) => other[index] ?? 0)))) /
    pairs ** 2;
  return {
    pairs,
    observed,
    byChance,
    kappa: kappaOf(table, allAlike(size)),
    weighted: kappaOf(table, weights),
    pabak: size < 2 ? 1 : (size * observed - 1) / (size - 1),
  };
}

const levels = [1, 2, 3, 4] as const;
type Level = (typeof levels)[number];

/**
 * Agreement of two assessors on the four levels of help (`lib/mastery/sign-off.ts`): each pair is what
 * the one and the other gave the same student for the same skill. Weighted quadratically.
 */
export function agreementOfLevels(pairs: readonly (readonly [Level, Level])[]): Agreement | null {
  return agreement(
    levels.map((first) =>
      levels.map((second) => pairs.filter(([a, b]) => a === first && b === second).length),
    ),
  );
}
