import { z } from 'zod';
import type { Skill } from '../course/skills';
import type { GradebookState } from '../grading/gradebook-state';
import { labs, type Lab } from '../variants/labs';
import { reckon, type PartReckoning } from './assignment-reckoning';
import { extendedDue } from './due-times';
import type { AssignmentRow, AttemptRow, StudentRow } from './gradebook-rows';

export type CellPart = {
  partId: string;
  lab: Lab;
  /** How much it counts beside the other parts. */
  weight: number;
  state: 'not-started' | 'open' | 'submitted' | 'marked' | 'returned';
  /** What counts of it, after lateness; not rounded. */
  mark: number | null;
  gateFailed: boolean;
  attempts: number;
  /** See {@link GradebookCell.countedAttemptId}. */
  countedAttemptId: string | null;
};

export type GradebookCell = {
  studentId: string;
  assignmentId: string;
  state: GradebookState;
  /** After late penalty, counting rule, weights of the parts and override; not rounded. */
  mark: number | null;
  /** The pass mark that holds for it: the assignment's, as it was when the last attempt started. */
  passMark: number;
  /** Nothing of it is still to be marked, or a teacher has set the mark. */
  complete: boolean;
  excused: boolean;
  /** Of a single part before the late penalty; null for several, an average or an override alone. */
  raw: number | null;
  /** A safety gate was failed in what counts, and no mark set by hand stands over it. */
  gateFailed: boolean;
  /** The largest share that lateness took from an attempt that counts, 0–1. */
  latePenalty: number | null;
  overridden: boolean;
  attempts: number;
  /** Whether one of them is open. */
  underWay: boolean;
  /**
   * The attempt that counts by the assignment's rule, of an average the last that went into it; while
   * none is marked the last that was handed in. Null where none was. Of several parts, of the last.
   */
  countedAttemptId: string | null;
  /** The student's own due time where it differs from the assignment's. UTC, ISO 8601. */
  extendedDueAt: string | null;
  /** The marked parts in their order; one for most assignments. */
  parts: CellPart[];
  /** Skills that the assignment wants signed off and are not; empty where it asks for none. */
  toSignOff: Skill[];
};

const labSchema = z.enum(labs);
/** The lab that a marked part names. */
export const labOfPart = ({ reference }: { reference: string }): Lab => labSchema.parse(reference);

/** One student's cell of one assignment; `attempts` are theirs alone, in the order of their numbers. */
export function cellOf(
  student: StudentRow,
  assignment: AssignmentRow,
  attempts: readonly AttemptRow[],
  { now, toSignOff }: { now: Date; toSignOff: Skill[] },
): GradebookCell {
  const extension = assignment.extensions.length === 0 ? null : ownDue(student, assignment);
  const reckoning = reckon({
    attempts,
    extension,
    now,
    parts: assignment.parts,
    current: assignment.policy,
    word: assignment.overrides.find(({ studentId }) => studentId === student.id),
    feedbackReleasedAt: assignment.feedbackReleasedAt,
    needsSignOff: toSignOff.length > 0,
  });
  const { whole, mark, excused, gateFailed, overridden, passMark, state } = reckoning;
  const penalties = reckoning.parts.flatMap(({ counted }) => counted?.latePenalty ?? []);
  const parts = reckoning.parts.map(partShown);
  return {
    studentId: student.id,
    assignmentId: assignment.id,
    state,
    mark,
    passMark,
    excused,
    gateFailed,
    overridden,
    complete: overridden || whole.allMarked,
    raw: parts.length === 1 ? (reckoning.parts[0]?.counted?.raw ?? null) : null,
    latePenalty: penalties.length === 0 ? null : Math.max(...penalties),
    attempts: attempts.length,
    underWay: reckoning.parts.some(({ open }) => open !== null),
    countedAttemptId:
      parts.findLast(({ countedAttemptId }) => countedAttemptId !== null)?.countedAttemptId ?? null,
    extendedDueAt: extension?.toISOString() ?? null,
    parts,
    toSignOff,
  };
}

/** The student's own extension, else the latest of the student's groups, else null. */
function ownDue(student: StudentRow, { extensions }: AssignmentRow): Date | null {
  const groups = student.groups.map(({ groupId }) => groupId);
  return extendedDue(
    extensions.filter(
      ({ studentId, groupId }) =>
        studentId === student.id || (groupId !== null && groups.includes(groupId)),
    ),
  );
}

function partShown({
  part,
  attempts,
  counted,
  ...standing
}: PartReckoning<AssignmentRow['parts'][number]>): CellPart {
  return {
    partId: part.id,
    lab: labOfPart(part),
    weight: part.weight,
    state: partState({ ...standing, counted }),
    mark: counted?.mark ?? null,
    gateFailed: counted?.gateFailed ?? false,
    attempts: attempts.length,
    countedAttemptId: counted?.attempt.id ?? standing.lastIn?.id ?? null,
  };
}

function partState({
  returned,
  counted,
  lastIn,
  open,
}: Pick<PartReckoning<unknown>, 'returned' | 'counted' | 'lastIn' | 'open'>): CellPart['state'] {
  if (returned) return 'returned';
  if (counted !== null) return 'marked';
  if (lastIn !== null) return 'submitted';
  return open === null ? 'not-started' : 'open';
}
