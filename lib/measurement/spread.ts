export const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/**
 * Mean squared distance from the mean, over n: of the very people measured, not of those they were
 * drawn from. It belongs with p(1 − p), which is a variance over n too; NaN of nobody.
 */
export function populationVariance(values: readonly number[]): number {
  const middle = mean(values);
  return mean(values.map((value) => (value - middle) ** 2));
}

/** The same over n − 1: for what is to hold beyond the people measured. NaN of fewer than two. */
export const sampleDeviation = (values: readonly number[]): number =>
  Math.sqrt((populationVariance(values) * values.length) / (values.length - 1));

/** So little spread is the noise of adding binary fractions, not a difference between people. */
const noise = 1e-12;
export const hasSpread = (values: readonly number[]): boolean =>
  values.length > 1 && populationVariance(values) > noise;

/** Pearson's r of two lists of equal length, in [−1, 1]; null where either has no spread. */
export function correlation(xs: readonly number[], ys: readonly number[]): number | null {
  if (!hasSpread(xs) || !hasSpread(ys)) return null;
  const [x, y] = [mean(xs), mean(ys)];
  const together = mean(xs.map((value, index) => (value - x) * ((ys[index] ?? y) - y)));
  const r = together / Math.sqrt(populationVariance(xs) * populationVariance(ys));
  return Math.max(-1, Math.min(1, r));
}
