import 'server-only';
import { z } from 'zod';
import { canTeachClass, type Viewer } from '../auth/policy';
import { classOfAssignment } from './access';
import { writeAudit } from './audit';
import { holdClass } from './class-in-line';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { readExtraTime } from './extra-time';
import type { ExtraTime } from './extra-time-input';
import { extendDue } from './gradebook-decisions';
import { firstField, firstMessage } from './names';
import { changedMeanwhile, isAsOpened, openedOnSchema, type OpenedOn } from './opened-on';
import { failure, notFound, success, type Result } from './result';

/** Who has a due time of their own at an assignment, and who has more time or attempts at any. */
export type AssignmentExtensions = {
  given: {
    kind: 'student' | 'group';
    id: string;
    name: string;
    /** UTC, ISO 8601. */
    dueAt: string;
    note: string;
    /** UTC, ISO 8601. */
    changedAt: string;
  }[];
  /** Lasting ones of students; they hold for every assignment. */
  accommodations: {
    studentId: string;
    name: string;
    extraAttempts: number;
    extraTime: ExtraTime;
  }[];
  /** Whom more time can be given to. */
  students: { id: string; name: string }[];
  groups: { id: string; name: string; members: number }[];
};

type Given = AssignmentExtensions['given'][number];

/** For the owner and the teachers only: accommodations are nobody else's business. */
export async function listExtensions(
  viewer: Viewer,
  assignmentId: string,
): Promise<AssignmentExtensions | null> {
  const classId = await classOfAssignment(viewer, assignmentId, canTeachClass);
  if (classId === null) return null;
  const [rows, students, groups] = await Promise.all([
    db().extension.findMany({
      where: { assignmentId },
      select: {
        dueAt: true,
        note: true,
        changedAt: true,
        student: { select: { id: true, displayName: true } },
        group: { select: { id: true, name: true } },
      },
    }),
    db().student.findMany({
      where: { classId, leftAt: null },
      orderBy: { cardNumber: 'asc' },
      select: {
        id: true,
        displayName: true,
        accommodation: { select: { extraAttempts: true, extraTime: true } },
      },
    }),
    db().group.findMany({
      where: { classId },
      orderBy: { name: 'asc' },
      select: { id: true, name: true, _count: { select: { members: true } } },
    }),
  ]);
  const given = rows.flatMap(({ dueAt, note, changedAt, student, group }): Given[] => {
    const shared = { dueAt: dueAt.toISOString(), note, changedAt: changedAt.toISOString() };
    if (student !== null)
      return [{ kind: 'student', id: student.id, name: student.displayName, ...shared }];
    return group === null ? [] : [{ kind: 'group', ...group, ...shared }];
  });
  return {
    given: [...given].sort((a, b) => a.kind.localeCompare(b.kind) || a.name.localeCompare(b.name)),
    accommodations: students.flatMap(({ id, displayName, accommodation }) => {
      const extraAttempts = accommodation?.extraAttempts ?? 0;
      const extraTime = readExtraTime(accommodation?.extraTime);
      return extraAttempts === 0 && extraTime === 'none'
        ? []
        : [{ studentId: id, name: displayName, extraAttempts, extraTime }];
    }),
    students: students.map(({ id, displayName }) => ({ id, name: displayName })),
    groups: groups.map(({ id, name, _count }) => ({ id, name, members: _count.members })),
  };
}

const groupSchema = z.strictObject({
  groupId: z.string().max(100),
  assignmentId: z.string().max(100),
  /** UTC, ISO 8601; null takes it back. */
  dueAt: z.iso.datetime({ error: 'The new due time is not a date and time.' }).nullable(),
  note: z
    .string()
    .trim()
    .min(1, 'Write a short note: why? It is kept with the change.')
    .max(500, 'Keep the note below 500 characters.'),
  openedOn: openedOnSchema,
});

/**
 * A due time for everybody in a group; null takes it back. A student's own extension stands over it, and
 * of several groups the latest holds (see extendedDue).
 */
export async function extendGroupDue(
  viewer: Viewer,
  input: {
    groupId: string;
    assignmentId: string;
    dueAt: string | null;
    note: string;
    openedOn?: OpenedOn;
  },
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const about = z.looseObject({ groupId: z.string(), assignmentId: z.string() }).safeParse(input);
  if (!about.success) return notFound();
  const classId = await classOfAssignment(viewer, about.data.assignmentId, canTeachClass);
  if (classId === null) return notFound();
  const { groupId } = about.data;
  if ((await db().group.count({ where: { id: groupId, classId } })) === 0) return notFound();
  const parsed = groupSchema.safeParse(input);
  if (!parsed.success)
    return failure('bad-input', firstMessage(parsed.error), firstField(parsed.error));
  const { assignmentId, dueAt, note: reason, openedOn } = parsed.data;
  return db().$transaction(async (transaction) => {
    await holdClass(transaction, classId);
    const where = { assignmentId_groupId: { assignmentId, groupId } };
    const before = await transaction.extension.findUnique({
      where,
      select: { dueAt: true, changedAt: true },
    });
    if (!isAsOpened(openedOn, before?.changedAt)) return changedMeanwhile();
    if (dueAt === null) {
      await transaction.extension.deleteMany({ where: { assignmentId, groupId } });
    } else {
      const data = { dueAt: new Date(dueAt), note: reason, changedAt: clock.now() };
      const create = { assignmentId, groupId, ...data };
      await transaction.extension.upsert({ where, create, update: data });
    }
    const entry = {
      classId,
      action: 'group-due-extended',
      reason,
      subject: `group ${groupId} assignment ${assignmentId}`,
      before: { dueAt: before?.dueAt.toISOString() ?? null },
      after: { dueAt },
    };
    await writeAudit(transaction, viewer, entry, clock);
    return success(null);
  });
}

/** More time for a student or a group, by one form. */
export async function extendDueOf(
  viewer: Viewer,
  input: {
    kind: 'student' | 'group';
    id: string;
    assignmentId: string;
    dueAt: string | null;
    note: string;
    openedOn?: OpenedOn;
  },
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const { kind, id, ...rest } = input;
  return kind === 'student'
    ? extendDue(viewer, { ...rest, studentId: id }, clock)
    : extendGroupDue(viewer, { ...rest, groupId: id }, clock);
}
