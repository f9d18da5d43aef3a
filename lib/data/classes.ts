import 'server-only';
import { randomBytes } from 'node:crypto';
import { z } from 'zod';
import { classCodeFrom } from '../auth/class-code';
import {
  canCreateClass,
  canOwnClass,
  canRunClass,
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
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { isUniqueViolation } from './is-unique-violation';
import { firstMessage, nameSchema } from './names';
import { failure, notFound, success, type Result } from './result';

export type { ClassRole } from '../auth/policy';
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

const classNameSchema = nameSchema('The name of the class', 80);

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

type Settings = { name: string; idleSignOutMinutes: number | null; retentionDate: Date };

/** Changes one setting of a class the viewer may change, with what it was before in the audit. */
async function changeSettings(
  viewer: Viewer,
  classId: string,
  action: string,
  data: Partial<Settings>,
  clock: Clock,
): Promise<Result<null>> {
  const plain = (settings: Settings) => ({
    ...('name' in data ? { name: settings.name } : {}),
    ...('idleSignOutMinutes' in data ? { idleSignOutMinutes: settings.idleSignOutMinutes } : {}),
    ...('retentionDate' in data ? { retentionDate: settings.retentionDate.toISOString() } : {}),
  });
  const select = { name: true, idleSignOutMinutes: true, retentionDate: true } as const;
  await db().$transaction(async (transaction) => {
    const where = { id: classId };
    const before = await transaction.class.findUniqueOrThrow({ where, select });
    const after = await transaction.class.update({ where, data, select });
    const entry = { classId, action, subject: classId, before: plain(before), after: plain(after) };
    await writeAudit(transaction, viewer, entry, clock);
  });
  return success(null);
}

export async function renameClass(
  viewer: Viewer,
  classId: string,
  name: string,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  if (!(await mayWithClass(viewer, classId, canTeachClass))) return notFound();
  const parsed = classNameSchema.safeParse(name);
  if (!parsed.success) return failure('bad-input', firstMessage(parsed.error), 'name');
  return changeSettings(viewer, classId, 'class-renamed', { name: parsed.data }, clock);
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

/** 20 for the shared-computer sign-out, null for the usual four hours. */
export async function setIdleSignOut(
  viewer: Viewer,
  classId: string,
  minutes: number | null,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  if (!(await mayWithClass(viewer, classId, canTeachClass))) return notFound();
  const parsed = z.number().int().min(5).max(240).nullable().safeParse(minutes);
  if (!parsed.success) {
    return failure('bad-input', 'Give whole minutes from 5 to 240.', 'idleSignOutMinutes');
  }
  const change = { idleSignOutMinutes: parsed.data };
  return changeSettings(viewer, classId, 'idle-sign-out', change, clock);
}

/** The date (YYYY-MM-DD) from which the class and all its work may be purged. */
export async function setRetentionDate(
  viewer: Viewer,
  classId: string,
  date: string,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  if (!(await mayWithClass(viewer, classId, canRunClass))) return notFound();
  const parsed = z.iso.date().safeParse(date);
  if (!parsed.success)
    return failure('bad-input', 'Give the date as year-month-day.', 'retentionDate');
  const retentionDate = new Date(`${parsed.data}T00:00:00Z`);
  if (retentionDate <= clock.now()) {
    return failure('bad-input', 'Choose a day in the future.', 'retentionDate');
  }
  return changeSettings(viewer, classId, 'retention-date', { retentionDate }, clock);
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
