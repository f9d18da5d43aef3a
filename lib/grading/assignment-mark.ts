import { withoutNoise, type CountedMark } from './counted-mark';

/** One marked part of an assignment: what counts of it by the assignment's rule; null: nothing yet. */
export type PartMark = { weight: number; excused: boolean; counted: CountedMark | null };

export type AssignmentMark = {
  /** 0–100, the weighted mean over the parts that are marked and not excused; null when none is. */
  mark: number | null;
  /** Every part that is not excused has a mark. */
  allMarked: boolean;
  /** Of any part that counts. */
  gateFailed: boolean;
};

/**
 * The mark of an assignment from its parts. What is not marked yet is left out, never taken for zero:
 * an unfinished assignment shows how the finished parts stand.
 */
export function assignmentMark(parts: readonly PartMark[]): AssignmentMark {
  const asked = parts.filter(({ excused }) => !excused);
  const marked = asked.flatMap(({ weight, counted }) =>
    counted === null ? [] : [{ weight, counted }],
  );
  const weights = marked.reduce((sum, { weight }) => sum + weight, 0);
  return {
    mark:
      weights === 0
        ? null
        : withoutNoise(
            marked.reduce((sum, { weight, counted }) => sum + weight * counted.mark, 0) / weights,
          ),
    allMarked: marked.length === asked.length,
    gateFailed: marked.some(({ counted }) => counted.gateFailed),
  };
}
