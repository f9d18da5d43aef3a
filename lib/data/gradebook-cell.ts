import { z } from 'zod';
import type { Skill } from '../course/skills';
import { assignmentMark } from '../grading/assignment-mark';
import { countedMark } from '../grading/counted-mark';
import { gradebookState, type GradebookState } from '../grading/gradebook-state';
import { labs, type Lab } from '../variants/labs';
import { lateness } from './attempt-standing';
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
  const parts = assignment.parts.map((part, index) =>
    partOf(
      part,
      assignment.parts.length === 1
        ? attempts
        : attempts.filter(({ partId }) => (partId === null ? index === 0 : partId === part.id)),
      extension,
      assignment,
    ),
  );
  const latest = attempts.reduce<AttemptRow | undefined>(
    (last, one) => (last === undefined || one.startedAt >= last.startedAt ? one : last),
    undefined,
  );
  const policy = latest?.policy ?? assignment.policy;
  const whole = assignmentMark(parts);
  const override = assignment.overrides.find(({ studentId }) => studentId === student.id);
  const setByHand = override?.mark ?? null;
  const overridden = setByHand !== null;
  const mark = setByHand ?? whole.mark;
  const gateFailed = !overridden && whole.gateFailed;
  const excused = override?.excused ?? false;
  const penalties = parts.flatMap(({ counted }) => counted?.latePenalty ?? []);
  return {
    studentId: student.id,
    assignmentId: assignment.id,
    state: gradebookState({
      excused,
      mark,
      passMark: policy.passMark,
      gateFailed,
      resultShown: true,
      late: parts.some(({ late }) => late),
      submitted: parts.some(({ submitted }) => submitted),
      underWay: parts.some(({ underWay }) => underWay),
      partMissing: !overridden && parts.some(({ submitted }) => !submitted),
      returned: !overridden && parts.some(({ shown }) => shown.state === 'returned'),
      needsSignOff: toSignOff.length > 0,
      dueAtMs: extension?.getTime() ?? (policy.dueAt === null ? null : Date.parse(policy.dueAt)),
      nowMs: now.getTime(),
    }),
    ...{ mark, excused, gateFailed, overridden },
    complete: overridden || whole.allMarked,
    raw: parts.length === 1 ? (parts[0]?.counted?.raw ?? null) : null,
    latePenalty: penalties.length === 0 ? null : Math.max(...penalties),
    attempts: attempts.length,
    underWay: parts.some(({ underWay }) => underWay),
    countedAttemptId:
      parts.findLast(({ shown }) => shown.countedAttemptId !== null)?.shown.countedAttemptId ??
      null,
    extendedDueAt: extension?.toISOString() ?? null,
    parts: parts.map(({ shown }) => shown),
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

function partOf(
  part: AssignmentRow['parts'][number],
  attempts: readonly AttemptRow[],
  extension: Date | null,
  assignment: AssignmentRow,
) {
  const submitted = attempts.filter(({ status }) => status === 'submitted');
  const standings = submitted.map(({ policy, submittedAt }) =>
    submittedAt === null
      ? { late: false, share: 0 }
      : lateness(
          policy,
          extension ?? (policy.dueAt === null ? null : new Date(policy.dueAt)),
          submittedAt,
        ),
  );
  const { counting } = (attempts.at(-1) ?? assignment).policy;
  const counted = countedMark(
    submitted.flatMap(({ id, graded }, index) => {
      const latePenalty = standings[index]?.share ?? 0;
      return graded === null
        ? []
        : [{ id, raw: graded.total, latePenalty, gateFailed: graded.gateFailed }];
    }),
    counting,
  );
  const lastIn = submitted.at(-1);
  const underWay = attempts.some(({ status }) => status === 'open');
  const shown: CellPart = {
    partId: part.id,
    lab: labOfPart(part),
    weight: part.weight,
    state: partState({
      returned: lastIn !== undefined && lastIn.returnedAt !== null,
      marked: counted !== null,
      submitted: lastIn !== undefined,
      underWay,
    }),
    mark: counted?.mark ?? null,
    gateFailed: counted?.gateFailed ?? false,
    attempts: attempts.length,
    countedAttemptId: counted?.attempt.id ?? lastIn?.id ?? null,
  };
  return {
    ...{ shown, counted, underWay, weight: part.weight },
    submitted: lastIn !== undefined,
    late: standings.at(-1)?.late ?? false,
  };
}

function partState(input: {
  returned: boolean;
  marked: boolean;
  submitted: boolean;
  underWay: boolean;
}): CellPart['state'] {
  if (input.returned) return 'returned';
  if (input.marked) return 'marked';
  if (input.submitted) return 'submitted';
  return input.underWay ? 'open' : 'not-started';
}
