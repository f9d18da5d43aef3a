import { withoutNoise } from './counted-mark';

/** Something that is marked from 0 to 100; `mark` is null while it is not. */
export type WeightedMark = { weight: number; excused: boolean; mark: number | null };

/**
 * The mean by weight over what is marked and not excused, rounded to nothing a teacher could see; null
 * where nothing is, or nothing of any weight. What is not marked is left out, never taken for zero.
 */
export function weightedMean(marks: readonly WeightedMark[]): number | null {
  const counting = marks.flatMap(({ weight, excused, mark }) =>
    excused || mark === null ? [] : [{ weight, mark }],
  );
  const weights = counting.reduce((sum, { weight }) => sum + weight, 0);
  if (weights === 0) return null;
  return withoutNoise(counting.reduce((sum, { weight, mark }) => sum + weight * mark, 0) / weights);
}
