import 'server-only';
import type { Viewer } from '../auth/policy';
import { countedMark } from '../grading/counted-mark';
import { gradebookState, type GradebookState } from '../grading/gradebook-state';
import type { Lab } from '../variants/labs';
import { standingOf } from './attempt-standing';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { labTaskOf } from './lab-tasks/lab-tasks';
import { extendedDue, extensionsOf } from './due-times';
import { policyOfAttempt, policyOfColumns, policySelect } from './stored-policy';

export type StudentAssignment = {
  assignmentId: string;
  lab: Lab;
  title: string;
  placeName: string;
  /** The student's own due time: with any extension. UTC, ISO 8601. */
  dueAt: string | null;
  dueTimeZone: string;
  state: GradebookState;
  /** null while there is none or the feedback is withheld. */
  mark: number | null;
  passMark: number;
  /** A safety gate was failed in what counts; false while the feedback is withheld. */
  gateFailed: boolean;
  attemptsUsed: number;
  /** With the student's extra attempts; null: no limit. */
  attemptsAllowed: number | null;
  openAttemptId: string | null;
  lastSubmittedAttemptId: string | null;
  feedbackVisible: boolean;
  lessonSlug: string | null;
};

const listSelect = (studentId: string) => ({
  id: true,
  title: true,
  dueTimeZone: true,
  feedbackReleasedAt: true,
  ...policySelect,
  parts: {
    select: { kind: true, reference: true, scenarioVersion: { select: { placeName: true } } },
  },
  extensions: extensionsOf(studentId),
  overrides: { where: { studentId }, select: { mark: true, excused: true } },
  attempts: {
    where: { studentId, mode: 'check' as const },
    orderBy: { number: 'asc' as const },
    select: {
      id: true,
      mode: true,
      status: true,
      policy: true,
      submittedAt: true,
      marks: {
        orderBy: { graderVersion: 'desc' as const },
        take: 1,
        select: { total: true, gateFailed: true },
      },
    },
  },
});

const loadAll = (classId: string, studentId: string) =>
  db().assignment.findMany({
    where: { classId, state: 'published' },
    orderBy: [{ dueAt: 'asc' }, { publishedAt: 'asc' }],
    select: listSelect(studentId),
  });
type AssignmentRow = Awaited<ReturnType<typeof loadAll>>[number];

/** What the viewing student has to do and has done; empty for everybody else. */
export async function listStudentAssignments(
  viewer: Viewer,
  clock: Clock = systemClock,
): Promise<StudentAssignment[]> {
  if (viewer.kind !== 'student') return [];
  const { studentId, classId } = viewer;
  const [rows, accommodation] = await Promise.all([
    loadAll(classId, studentId),
    db().accommodation.findUnique({ where: { studentId }, select: { extraAttempts: true } }),
  ]);
  const now = clock.now();
  return rows.map((row) => summary(row, studentId, accommodation?.extraAttempts ?? 0, now));
}

function summary(
  row: AssignmentRow,
  studentId: string,
  extraAttempts: number,
  now: Date,
): StudentAssignment {
  const current = policyOfColumns(row);
  const { attempts } = row;
  const open = attempts.find(({ status }) => status === 'open');
  const submitted = attempts.filter(({ status }) => status === 'submitted');
  const latest = attempts.at(-1);
  // The rules that the latest attempt started with hold for what is shown of it.
  const policy = latest === undefined ? current : policyOfAttempt(latest.policy);
  const extension = extendedDue(row.extensions);
  const standings = submitted.map((attempt) =>
    standingOf(
      {
        ...attempt,
        student: { id: studentId, groups: [] },
        assignment: {
          feedbackReleasedAt: row.feedbackReleasedAt,
          extensions: extension === null ? [] : [{ studentId, groupId: null, dueAt: extension }],
        },
      },
      now,
    ),
  );
  const feedbackVisible = standings.every((standing) => standing.feedbackVisible);
  const marked = submitted.flatMap(({ marks }, index) => {
    const [graded] = marks;
    const latePenalty = standings[index]?.latePenalty ?? 0;
    return graded === undefined
      ? []
      : [{ raw: graded.total, latePenalty, gateFailed: graded.gateFailed }];
  });
  const [override] = row.overrides;
  const counted = countedMark(marked, policy.counting);
  const setByHand = override?.mark ?? null;
  const mark = setByHand ?? counted?.mark ?? null;
  const gateFailed = setByHand === null && (counted?.gateFailed ?? false);
  const dueAt =
    extension?.toISOString() ??
    (open === undefined ? current.dueAt : policyOfAttempt(open.policy).dueAt);
  const part = row.parts.find(({ kind }) => kind === 'lab');
  return {
    assignmentId: row.id,
    lab: labTaskOf(part?.reference ?? '').lab,
    title: row.title,
    placeName: part?.scenarioVersion?.placeName ?? '',
    dueAt,
    dueTimeZone: row.dueTimeZone,
    state: gradebookState({
      excused: override?.excused ?? false,
      mark,
      passMark: policy.passMark,
      gateFailed,
      resultShown: feedbackVisible,
      late: standings.at(-1)?.late ?? false,
      submitted: submitted.length > 0,
      underWay: open !== undefined,
      dueAtMs: dueAt === null ? null : Date.parse(dueAt),
      nowMs: now.getTime(),
    }),
    mark: feedbackVisible ? mark : null,
    gateFailed: feedbackVisible && gateFailed,
    passMark: policy.passMark,
    attemptsUsed: attempts.length,
    attemptsAllowed:
      current.attemptsAllowed === null ? null : current.attemptsAllowed + extraAttempts,
    openAttemptId: open?.id ?? null,
    lastSubmittedAttemptId: submitted.at(-1)?.id ?? null,
    feedbackVisible,
    lessonSlug: row.parts.find(({ kind }) => kind === 'lesson')?.reference ?? null,
  };
}
