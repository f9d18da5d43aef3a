import 'server-only';
import { randomBytes } from 'node:crypto';
import { classCodeFrom } from '../auth/class-code';
import {
  canCreateClass,
  canOwnClass,
  canSeeClass,
  canTeachClass,
  roleIn,
  type ClassAccess,
  type ClassRole,
  type Viewer,
} from '../auth/policy';
import { isTimeZone } from '../sky/local-time';
import { classAccessSelect, mayWithClass } from './access';
import { writeAudit } from './audit';
import { classNameSchema } from './class-settings';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { isUniqueViolation } from './is-unique-violation';
import { firstMessage } from './names';
import { failure, notFound, success, type Result } from './result';

export type { ClassRole } from '../auth/policy';
export { renameClass, setIdleSignOut, setRetentionDate } from './class-settings';
export type ClassSummary = {
  id: string;
  name: string;
  /** Eight characters, without the dash it is shown with. */
  code: string;
  timeZone: string;
  /** Without those who left. */
  studentCount: number;
  assignmentCount: number;
  /** A substitute has no role among the teachers; 'cover' says what they are. */
  role: ClassRole | 'cover';
  isDemo: boolean;
  /** UTC, ISO 8601; null while the class is at work. */
  archivedAt: string | null;
};
export type ClassDetails = ClassSummary & {
  /** UTC, ISO 8601: when `purge` may delete the class. */
  retentionDate: string;
  /** The shared-computer sign-out; null when the usual four hours hold. */
  idleSignOutMinutes: number | null;
};

const summarySelect = {
  ...classAccessSelect,
  name: true,
  code: true,
  timeZone: true,
  isDemo: true,
  retentionDate: true,
  idleSignOutMinutes: true,
  _count: { select: { students: { where: { leftAt: null } }, assignments: true } },
} as const;

type ClassRow = ClassAccess & {
  name: string;
  code: string;
  timeZone: string;
  isDemo: boolean;
  _count: { students: number; assignments: number };
};

function summaryOf(viewer: Viewer, row: ClassRow): ClassSummary | null {
  if (!canSeeClass(viewer, row)) return null;
  const role = roleIn(viewer, row) ?? 'cover';
  const { id, name, code, timeZone, isDemo, archivedAt, _count } = row;
  return {
    id,
    name,
    code,
    timeZone,
    studentCount: _count.students,
    assignmentCount: _count.assignments,
    role,
    isDemo,
    archivedAt: archivedAt?.toISOString() ?? null,
  };
}

export async function listClasses(viewer: Viewer): Promise<ClassSummary[]> {
  if (viewer.kind !== 'teacher') return [];
  const rows = await db().class.findMany({
    where: { members: { some: { teacherId: viewer.teacherId } } },
    orderBy: [{ createdAt: 'asc' }, { id: 'asc' }],
    select: summarySelect,
  });
  return rows.map((row) => summaryOf(viewer, row)).filter((row) => row !== null);
}

/**
 * End of the school year + 90 days, taking the next 31 July as its end: our guess for a new class;
 * the owner sets the date.
 */
export function defaultRetentionDate(now: Date): Date {
  const year = now.getUTCMonth() >= 7 ? now.getUTCFullYear() + 1 : now.getUTCFullYear();
  return new Date(Date.UTC(year, 6, 31 + 90));
}

/** A code that no class has. 40 random bits meet by accident once in a lifetime, hence few tries. */
async function unusedClassCode(): Promise<string> {
  for (let tries = 0; tries < 5; tries += 1) {
    const code = classCodeFrom(randomBytes(8));
    if ((await db().class.count({ where: { code } })) === 0) return code;
  }
  throw new Error('five random class codes were all taken: the random numbers are not random');
}

export async function createClass(
  viewer: Viewer,
  input: { name: string; timeZone: string },
  clock: Clock = systemClock,
): Promise<Result<{ classId: string }>> {
  if (!canCreateClass(viewer) || viewer.kind !== 'teacher') return notFound();
  const name = classNameSchema.safeParse(input.name);
  if (!name.success) return failure('bad-input', firstMessage(name.error), 'name');
  if (!isTimeZone(input.timeZone)) {
    return failure(
      'bad-input',
      'This time zone is not known. Choose one from the list.',
      'timeZone',
    );
  }
  const now = clock.now();
  const { id } = await db().class.create({
    data: {
      name: name.data,
      code: await unusedClassCode(),
      timeZone: input.timeZone,
      retentionDate: defaultRetentionDate(now),
      createdAt: now,
      members: { create: { teacherId: viewer.teacherId, role: 'owner' } },
    },
    select: { id: true },
  });
  return success({ classId: id });
}

export async function getClass(viewer: Viewer, classId: string): Promise<ClassDetails | null> {
  const row = await db().class.findUnique({ where: { id: classId }, select: summarySelect });
  const summary = row && summaryOf(viewer, row);
  return (
    summary && {
      ...summary,
      retentionDate: row.retentionDate.toISOString(),
      idleSignOutMinutes: row.idleSignOutMinutes,
    }
  );
}

/** The old code stops working at once; cards with it must be printed anew, their words stay good. */
export async function rotateClassCode(
  viewer: Viewer,
  classId: string,
  clock: Clock = systemClock,
): Promise<Result<{ code: string }>> {
  if (!(await mayWithClass(viewer, classId, canTeachClass))) return notFound();
  const code = await unusedClassCode();
  try {
    await db().$transaction(async (transaction) => {
      await transaction.class.update({ where: { id: classId }, data: { code } });
      await writeAudit(
        transaction,
        viewer,
        { classId, action: 'class-code', subject: classId },
        clock,
      );
    });
  } catch (error) {
    if (isUniqueViolation(error)) return failure('try-again', 'That did not work. Try again.');
    throw error;
  }
  return success({ code });
}

/** Students, work, marks, audit, and what the security log says of them: all of it goes. */
export async function deleteClass(viewer: Viewer, classId: string): Promise<Result<null>> {
  if (!(await mayWithClass(viewer, classId, canOwnClass))) return notFound();
  await db().$transaction(async (transaction) => {
    const students = await transaction.student.findMany({
      where: { classId },
      select: { id: true },
    });
    const gone = [classId, ...students.map(({ id }) => id)];
    await transaction.securityEvent.deleteMany({ where: { subject: { in: gone } } });
    await transaction.class.delete({ where: { id: classId } });
  });
  return success(null);
}
