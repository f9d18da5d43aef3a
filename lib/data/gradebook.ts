import 'server-only';
import { canSeeClass, canTakeFromClass, type Viewer } from '../auth/policy';
import { countedMark } from '../grading/counted-mark';
import { gradebookState, type GradebookState } from '../grading/gradebook-state';
import { mayWithClass } from './access';
import { standingOf } from './attempt-standing';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { extendedDue } from './due-times';
import { gradebookCsv } from './gradebook-csv';
import { policyOfAttempt, policyOfColumns, policySelect } from './stored-policy';

export type { GradebookState } from '../grading/gradebook-state';
export { excuse, extendDue, overrideMark } from './gradebook-decisions';
export { getStudentRecord, type StudentRecord } from './student-record';

export type GradebookCell = {
  studentId: string;
  assignmentId: string;
  state: GradebookState;
  /** What counts: after late penalty, counting rule and override; not rounded. */
  mark: number | null;
  /** Before the late penalty, of the attempt that counts; null for an average or an override alone. */
  raw: number | null;
  /** A safety gate was failed in what counts, and no mark set by hand stands over it. */
  gateFailed: boolean;
  /** Share that lateness took from the attempt that counts, 0–1. */
  latePenalty: number | null;
  overridden: boolean;
  attempts: number;
  /** Whether one of them is open. */
  underWay: boolean;
  /**
   * The attempt that counts by the assignment's rule, of an average the last that went into it; while
   * none is marked the last that was handed in. Null where none was.
   */
  countedAttemptId: string | null;
  /** The student's own due time where it differs from the assignment's. UTC, ISO 8601. */
  extendedDueAt: string | null;
};
export type Gradebook = {
  students: { id: string; displayName: string; cardNumber: number }[];
  assignments: { id: string; title: string; dueAt: string | null; passMark: number }[];
  cells: GradebookCell[];
};

const loadAssignments = (classId: string) =>
  db().assignment.findMany({
    where: { classId, state: 'published' },
    orderBy: [{ publishedAt: 'asc' }, { id: 'asc' }],
    select: {
      id: true,
      title: true,
      feedbackReleasedAt: true,
      ...policySelect,
      extensions: { select: { studentId: true, groupId: true, dueAt: true } },
      overrides: { select: { studentId: true, mark: true, excused: true } },
      attempts: {
        where: { mode: 'check' },
        orderBy: { number: 'asc' },
        select: {
          id: true,
          studentId: true,
          mode: true,
          status: true,
          policy: true,
          submittedAt: true,
          marks: {
            orderBy: { graderVersion: 'desc' },
            take: 1,
            select: { total: true, gateFailed: true },
          },
        },
      },
    },
  });
type AssignmentRow = Awaited<ReturnType<typeof loadAssignments>>[number];
type StudentRow = { id: string; groups: { groupId: string }[] };

/** Students × published assignments. */
export async function getGradebook(
  viewer: Viewer,
  classId: string,
  clock: Clock = systemClock,
): Promise<Gradebook | null> {
  if (!(await mayWithClass(viewer, classId, canSeeClass))) return null;
  const [students, assignments] = await Promise.all([
    db().student.findMany({
      where: { classId },
      orderBy: { cardNumber: 'asc' },
      select: {
        id: true,
        displayName: true,
        cardNumber: true,
        groups: { select: { groupId: true } },
      },
    }),
    loadAssignments(classId),
  ]);
  const now = clock.now();
  return {
    students: students.map(({ id, displayName, cardNumber }) => ({ id, displayName, cardNumber })),
    assignments: assignments.map(({ id, title, dueAt, passMark }) => ({
      id,
      title,
      dueAt: dueAt?.toISOString() ?? null,
      passMark,
    })),
    cells: students.flatMap((student) =>
      assignments.map((assignment) => cellOf(student, assignment, now)),
    ),
  };
}

function cellOf(student: StudentRow, assignment: AssignmentRow, now: Date): GradebookCell {
  const attempts = assignment.attempts.filter(({ studentId }) => studentId === student.id);
  const submitted = attempts.filter(({ status }) => status === 'submitted');
  const underWay = attempts.some(({ status }) => status === 'open');
  const override = assignment.overrides.find(({ studentId }) => studentId === student.id);
  const groups = student.groups.map(({ groupId }) => groupId);
  const extension = extendedDue(
    assignment.extensions.filter(
      ({ studentId, groupId }) =>
        studentId === student.id || (groupId !== null && groups.includes(groupId)),
    ),
  );
  const latest = attempts.at(-1);
  const policy =
    latest === undefined ? policyOfColumns(assignment) : policyOfAttempt(latest.policy);
  const standings = submitted.map((attempt) =>
    standingOf({ ...attempt, student, assignment }, now),
  );
  const counted = countedMark(
    submitted.flatMap(({ id, marks }, index) => {
      const [graded] = marks;
      const latePenalty = standings[index]?.latePenalty ?? 0;
      return graded === undefined
        ? []
        : [{ id, raw: graded.total, latePenalty, gateFailed: graded.gateFailed }];
    }),
    policy.counting,
  );
  const overridden = override?.mark !== null && override?.mark !== undefined;
  const mark = override?.mark ?? counted?.mark ?? null;
  const gateFailed = !overridden && (counted?.gateFailed ?? false);
  return {
    studentId: student.id,
    assignmentId: assignment.id,
    state: gradebookState({
      excused: override?.excused ?? false,
      mark,
      passMark: policy.passMark,
      gateFailed,
      resultShown: true,
      late: standings.at(-1)?.late ?? false,
      submitted: submitted.length > 0,
      underWay,
      dueAtMs: extension?.getTime() ?? (policy.dueAt === null ? null : Date.parse(policy.dueAt)),
      nowMs: now.getTime(),
    }),
    mark,
    raw: counted?.raw ?? null,
    gateFailed,
    latePenalty: counted?.latePenalty ?? null,
    overridden,
    attempts: attempts.length,
    underWay,
    countedAttemptId: counted?.attempt.id ?? submitted.at(-1)?.id ?? null,
    extendedDueAt: extension?.toISOString() ?? null,
  };
}

/** The gradebook as a spreadsheet, for the class's owner and teachers. */
export async function exportGradebookCsv(
  viewer: Viewer,
  classId: string,
  clock: Clock = systemClock,
): Promise<string | null> {
  if (!(await mayWithClass(viewer, classId, canTakeFromClass))) return null;
  const gradebook = await getGradebook(viewer, classId, clock);
  return gradebook === null ? null : gradebookCsv(gradebook);
}
