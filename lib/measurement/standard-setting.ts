import { mean, populationVariance, sampleDeviation } from './spread';

/**
 * Angoff's way to a pass mark: each judge says of every item how likely someone who only just passes
 * is to get it right (0–1, or as points), and the sums' mean is the cut. W. H. Angoff in R. L. Thorndike
 * (ed.), Educational Measurement, 1971. Of one judge: that judge's own pass mark, and no spread.
 *
 * @param ratings judges by items, at least one of each.
 */
export function angoffCut(ratings: readonly (readonly number[])[]): {
  /** In items (or points). */
  cut: number;
  judgeCuts: readonly number[];
  /** Between judges; null of one. */
  deviation: number | null;
  standardError: number | null;
} {
  const judgeCuts = ratings.map((row) => row.reduce((sum, rating) => sum + rating, 0));
  const deviation = judgeCuts.length < 2 ? null : sampleDeviation(judgeCuts);
  return {
    cut: mean(judgeCuts),
    judgeCuts,
    deviation,
    standardError: deviation === null ? null : deviation / Math.sqrt(judgeCuts.length),
  };
}

/** Whole items that reach a cut: 3.5 takes 4. Adding binary fractions must not make it one more. */
export const itemsToPass = (cut: number): number => Math.ceil(cut - 1e-9);

/** Least squares of y on x; null where all x are the same. */
function line(xs: readonly number[], ys: readonly number[]) {
  const variance = populationVariance(xs);
  if (!(variance > 0)) return null;
  const [x, y] = [mean(xs), mean(ys)];
  const together = mean(xs.map((value, index) => (value - x) * ((ys[index] ?? y) - y)));
  const slope = together / variance;
  const ofY = populationVariance(ys);
  return {
    slope,
    intercept: y - slope * x,
    rSquared: ofY > 0 ? together ** 2 / (variance * ofY) : null,
  };
}

/**
 * Borderline regression: the checklist's mark that goes with the global rating at which somebody only
 * just passes, read off the line through all. Whether so many people bear it is the caller's question
 * (`footingOf`). Null where all had the same rating.
 */
export function borderlineRegression(
  people: readonly { rating: number; mark: number }[],
  borderlineRating: number,
): { slope: number; intercept: number; rSquared: number | null; cut: number } | null {
  const found = line(
    people.map(({ rating }) => rating),
    people.map(({ mark }) => mark),
  );
  return found === null
    ? null
    : { ...found, cut: found.intercept + found.slope * borderlineRating };
}
