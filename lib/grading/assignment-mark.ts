import type { CountedMark } from './counted-mark';
import { weightedMean } from './weighted-mean';

/** One marked part of an assignment: what counts of it by the assignment's rule; null: nothing yet. */
export type PartMark = { weight: number; counted: CountedMark | null };

export type AssignmentMark = {
  /** 0–100, the weighted mean over the parts that are marked; null when none is. */
  mark: number | null;
  /** Every part has a mark. */
  allMarked: boolean;
  /** Of any part that counts. */
  gateFailed: boolean;
};

/**
 * The mark of an assignment from its parts: while some have none, how the others stand. Lateness has
 * been taken off each attempt before.
 */
export function assignmentMark(parts: readonly PartMark[]): AssignmentMark {
  return {
    mark: weightedMean(
      parts.map(({ weight, counted }) => ({ weight, excused: false, mark: counted?.mark ?? null })),
    ),
    allMarked: parts.length > 0 && parts.every(({ counted }) => counted !== null),
    gateFailed: parts.some(({ counted }) => counted?.gateFailed === true),
  };
}

/** Where a student stands with one assignment. `complete`: nothing of it is still to be marked. */
type StandingOfAssignment = {
  weight: number;
  excused: boolean;
  mark: number | null;
  complete: boolean;
};

/**
 * A student's mean over the assignments by their weights: those with a final mark that are not excused.
 * An assignment of which a part is still to come waits, past its due time too: what is not marked is no
 * zero until the teacher says so, and its state says "missing".
 */
export const studentMean = (assignments: readonly StandingOfAssignment[]): number | null =>
  weightedMean(
    assignments.map(({ weight, excused, mark, complete }) => ({
      weight,
      excused,
      mark: complete ? mark : null,
    })),
  );
