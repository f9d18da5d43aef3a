import { db } from './db';
import type { AssignmentPolicy } from './assignment-input';
import { policyOfAttempt, policyOfColumns, policySelect } from './stored-policy';

/** Narrows a gradebook to one student, one assignment or one cell. */
export type GradebookPart = { studentId?: string | undefined; assignmentId?: string | undefined };

const studentSelect = {
  id: true,
  displayName: true,
  cardNumber: true,
  leftAt: true,
  groups: { select: { groupId: true } },
} as const;

const assignmentSelect = (studentId: string | undefined) =>
  ({
    id: true,
    title: true,
    weight: true,
    needsSignOff: true,
    feedbackReleasedAt: true,
    ...policySelect,
    parts: {
      where: { kind: 'lab' },
      orderBy: { position: 'asc' },
      select: { id: true, reference: true, weight: true },
    },
    extensions: { select: { studentId: true, groupId: true, dueAt: true } },
    overrides: {
      where: studentId === undefined ? {} : { studentId },
      select: { studentId: true, mark: true, excused: true },
    },
  }) as const;

const attemptSelect = {
  id: true,
  studentId: true,
  assignmentId: true,
  partId: true,
  mode: true,
  status: true,
  policy: true,
  startedAt: true,
  submittedAt: true,
  returnedAt: true,
} as const;

/**
 * Everything that a gradebook is made of, in few plain queries: nested ones would ask anew for every
 * few hundred attempts, and of 200 students with 40 assignments there are ten thousand and more.
 */
export async function loadGradebookRows(
  classId: string,
  { studentId, assignmentId }: GradebookPart,
) {
  const assignmentWhere = {
    classId,
    state: 'published' as const,
    ...(assignmentId === undefined ? {} : { id: assignmentId }),
  };
  const attemptWhere = {
    mode: 'check' as const,
    assignment: assignmentWhere,
    ...(studentId === undefined ? {} : { studentId }),
  };
  const [students, assignments, attempts, marks, groups] = await Promise.all([
    db().student.findMany({
      where: { classId, ...(studentId === undefined ? {} : { id: studentId }) },
      orderBy: { cardNumber: 'asc' },
      select: studentSelect,
    }),
    db().assignment.findMany({
      where: assignmentWhere,
      orderBy: [{ publishedAt: 'asc' }, { id: 'asc' }],
      select: assignmentSelect(studentId),
    }),
    db().attempt.findMany({
      where: attemptWhere,
      orderBy: [{ number: 'asc' }, { startedAt: 'asc' }],
      select: attemptSelect,
    }),
    db().mark.findMany({
      where: { attempt: attemptWhere },
      select: { attemptId: true, graderVersion: true, total: true, gateFailed: true },
    }),
    db().group.findMany({
      where: { classId },
      orderBy: { name: 'asc' },
      select: { id: true, name: true },
    }),
  ]);
  const newest = new Map<string, (typeof marks)[number]>();
  for (const mark of marks) {
    const other = newest.get(mark.attemptId);
    if (other === undefined || other.graderVersion < mark.graderVersion)
      newest.set(mark.attemptId, mark);
  }
  const policyOf = policyReader();
  return {
    students,
    groups,
    assignments: assignments.map((row) => ({ ...row, policy: policyOfColumns(row) })),
    attempts: attempts.map((attempt) => ({
      ...attempt,
      policy: policyOf(attempt.policy),
      graded: newest.get(attempt.id) ?? null,
    })),
  };
}

/** Most attempts at an assignment froze the same policy: each is read once. */
function policyReader(): (stored: unknown) => AssignmentPolicy {
  const known = new Map<string, AssignmentPolicy>();
  return (stored) => {
    const text = JSON.stringify(stored);
    const policy = known.get(text) ?? policyOfAttempt(stored);
    known.set(text, policy);
    return policy;
  };
}

export type GradebookRows = Awaited<ReturnType<typeof loadGradebookRows>>;
export type StudentRow = GradebookRows['students'][number];
export type AssignmentRow = GradebookRows['assignments'][number];
export type AttemptRow = GradebookRows['attempts'][number];
