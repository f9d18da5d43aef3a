import 'server-only';
import { z } from 'zod';
import type { AssignmentPolicy } from './assignment-input';
import { db } from './db';
import { Prisma } from './generated/client';
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

/** A moment as the database's driver gives it. */
const moment = z.coerce.date();
const attemptRowSchema = z.object({
  id: z.string(),
  studentId: z.string(),
  assignmentId: z.string(),
  partId: z.string().nullable(),
  status: z.enum(['open', 'submitted']),
  policy: z.string(),
  startedAt: moment,
  submittedAt: moment.nullable(),
  returnedAt: moment.nullable(),
  total: z.number().nullable(),
  gateFailed: z.coerce.boolean().nullable(),
});

/**
 * The checks of published assignments in the order of their numbers, each with its newest mark. A plain
 * query: of 200 students with 40 assignments there are ten thousand and more, and all that is wanted of
 * a policy is whether it was read before.
 */
async function loadAttempts(classId: string, { studentId, assignmentId }: GradebookPart) {
  const ofStudent =
    studentId === undefined ? Prisma.empty : Prisma.sql`AND a."studentId" = ${studentId}`;
  const ofAssignment =
    assignmentId === undefined ? Prisma.empty : Prisma.sql`AND a."assignmentId" = ${assignmentId}`;
  const rows = await db().$queryRaw`
    SELECT a."id", a."studentId", a."assignmentId", a."partId", a."status",
      CAST(a."policy" AS TEXT) AS "policy", a."startedAt", a."submittedAt", a."returnedAt",
      m."total", m."gateFailed"
    FROM "Assignment" t
    JOIN "Attempt" a ON a."assignmentId" = t."id"
    LEFT JOIN "Mark" m ON m."attemptId" = a."id"
    WHERE t."classId" = ${classId} AND t."state" = 'published' AND a."mode" = 'check'
      ${ofStudent} ${ofAssignment}
    ORDER BY a."number", a."startedAt", m."graderVersion"`;
  const policyOf = policyReader();
  // Of several versions of a mark the last one stays.
  const newest = new Map(
    z
      .array(attemptRowSchema)
      .parse(rows)
      .map((row) => [row.id, row]),
  );
  return [...newest.values()].map(({ policy, total, gateFailed, ...attempt }) => ({
    ...attempt,
    policy: policyOf(policy),
    graded: total === null ? null : { total, gateFailed: gateFailed === true },
  }));
}

/** Everything that a gradebook is made of, in few queries. */
export async function loadGradebookRows(classId: string, only: GradebookPart) {
  const { studentId, assignmentId } = only;
  const assignmentWhere = {
    classId,
    state: 'published' as const,
    ...(assignmentId === undefined ? {} : { id: assignmentId }),
  };
  const [students, assignments, attempts, groups] = await Promise.all([
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
    loadAttempts(classId, only),
    db().group.findMany({
      where: { classId },
      orderBy: { name: 'asc' },
      select: { id: true, name: true },
    }),
  ]);
  return {
    students,
    groups,
    attempts,
    assignments: assignments.map((row) => ({ ...row, policy: policyOfColumns(row) })),
  };
}

/** Most attempts at an assignment froze the same policy: each is read once. */
function policyReader(): (stored: string) => AssignmentPolicy {
  const known = new Map<string, AssignmentPolicy>();
  return (stored) => {
    const policy = known.get(stored) ?? policyOfAttempt(JSON.parse(stored));
    known.set(stored, policy);
    return policy;
  };
}

export type GradebookRows = Awaited<ReturnType<typeof loadGradebookRows>>;
export type StudentRow = GradebookRows['students'][number];
export type AssignmentRow = GradebookRows['assignments'][number];
export type AttemptRow = GradebookRows['attempts'][number];
