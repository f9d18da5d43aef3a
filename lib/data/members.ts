import 'server-only';
import { z } from 'zod';
import { canRunClass, canTakeFromClass, roleIn, type ClassRole, type Viewer } from '../auth/policy';
import { classAccessSelect, mayWithClass } from './access';
import { writeAudit } from './audit';
import { systemClock, type Clock } from './clock';
import { db, type Transaction } from './db';
import { closeInvitationsOf } from './open-invitations';
import { failure, notFound, success, type Result } from './result';

export type ClassMember = {
  teacherId: string;
  displayName: string;
  email: string;
  role: ClassRole;
  isViewer: boolean;
};

const order: readonly ClassRole[] = ['owner', 'teacher', 'observer'];
const changedMeanwhile = () =>
  failure(
    'changed-meanwhile',
    'This has been changed meanwhile, so nothing was done. Load the page again to see how it stands.',
  );

/** Who teaches and who looks on, the owner first; for the class's owner and teachers. */
export async function listMembers(viewer: Viewer, classId: string): Promise<ClassMember[] | null> {
  if (viewer.kind !== 'teacher' || !(await mayWithClass(viewer, classId, canTakeFromClass))) {
    return null;
  }
  const members = await db().classMember.findMany({
    where: { classId },
    select: { role: true, teacher: { select: { id: true, displayName: true, email: true } } },
  });
  return members
    .map(({ role, teacher: { id, displayName, email } }) => ({
      teacherId: id,
      displayName,
      email,
      role,
      isViewer: id === viewer.teacherId,
    }))
    .toSorted(
      (one, other) =>
        order.indexOf(one.role) - order.indexOf(other.role) ||
        one.displayName.localeCompare(other.displayName, 'en'),
    );
}

const roleChangeSchema = z.object({
  teacherId: z.string().max(100),
  /** As the page showed it: another one means that somebody else was quicker. */
  from: z.enum(['teacher', 'observer']),
  to: z.enum(['teacher', 'observer']),
});

/** Between teacher and observer; ownership is handed over, never given besides. */
export async function changeRole(
  viewer: Viewer,
  classId: string,
  input: z.input<typeof roleChangeSchema>,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  if (!(await mayWithClass(viewer, classId, canRunClass))) return notFound();
  const parsed = roleChangeSchema.safeParse(input);
  if (!parsed.success) return failure('bad-input', 'Choose teacher or observer.', 'role');
  const { teacherId, from, to } = parsed.data;
  return db().$transaction(async (transaction) => {
    const { count } = await transaction.classMember.updateMany({
      where: { classId, teacherId, role: from },
      data: { role: to },
    });
    if (count === 0) return changedMeanwhile();
    await audit(transaction, viewer, { classId, teacherId, from, to }, clock);
    return success(null);
  });
}

/**
 * The owner takes a colleague out, or a colleague leaves. What they set and wrote stays, but
 * for the links that they invited others with and that nobody has used. The owner
 * hands the class over first: a class without an owner could not be deleted by anybody.
 */
export async function removeMember(
  viewer: Viewer,
  classId: string,
  teacherId: string,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const schoolClass = await db().class.findUnique({
    where: { id: classId },
    select: classAccessSelect,
  });
  if (schoolClass === null || viewer.kind !== 'teacher') return notFound();
  const leaves =
    viewer.teacherId === teacherId &&
    roleIn(viewer, schoolClass) !== null &&
    schoolClass.archivedAt === null;
  if (!leaves && !canRunClass(viewer, schoolClass)) return notFound();
  return db().$transaction(async (transaction) => {
    const member = await transaction.classMember.findUnique({
      where: { classId_teacherId: { classId, teacherId } },
      select: { role: true },
    });
    if (member === null) return leaves ? notFound() : changedMeanwhile();
    if (member.role === 'owner') {
      return failure(
        'last-owner',
        'The owner cannot leave. Hand the class over to a colleague first, or delete it.',
      );
    }
    await transaction.classMember.delete({ where: { classId_teacherId: { classId, teacherId } } });
    await closeInvitationsOf(transaction, viewer, { classId, teacherId }, clock);
    await audit(transaction, viewer, { classId, teacherId, from: member.role, to: null }, clock);
    return success(null);
  });
}

/**
 * Makes a teacher of the class its owner, and the owner a teacher. Refused when either has another
 * role by now; then nothing has changed.
 */
export async function handOverClass(
  viewer: Viewer,
  classId: string,
  teacherId: string,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  if (viewer.kind !== 'teacher' || !(await mayWithClass(viewer, classId, canRunClass))) {
    return notFound();
  }
  const { teacherId: ownerId } = viewer;
  return db().$transaction(async (transaction) => {
    const roleOf = async (id: string): Promise<ClassRole | null> =>
      (
        await transaction.classMember.findUnique({
          where: { classId_teacherId: { classId, teacherId: id } },
          select: { role: true },
        })
      )?.role ?? null;
    if ((await roleOf(ownerId)) !== 'owner' || (await roleOf(teacherId)) !== 'teacher') {
      return changedMeanwhile();
    }
    const give = (id: string, role: ClassRole) =>
      transaction.classMember.update({
        where: { classId_teacherId: { classId, teacherId: id } },
        data: { role },
      });
    await give(teacherId, 'owner');
    await give(ownerId, 'teacher');
    await audit(transaction, viewer, { classId, teacherId, from: 'teacher', to: 'owner' }, clock);
    const back = { classId, teacherId: ownerId, from: 'owner', to: 'teacher' } as const;
    await audit(transaction, viewer, back, clock);
    return success(null);
  });
}

/** One line of the audit for one teacher's role; null: not in the class any more. */
const audit = (
  transaction: Transaction,
  viewer: Viewer,
  change: { classId: string; teacherId: string; from: ClassRole; to: ClassRole | null },
  clock: Clock,
): Promise<void> =>
  writeAudit(
    transaction,
    viewer,
    {
      classId: change.classId,
      action: 'member-role',
      subject: `teacher ${change.teacherId}`,
      before: { role: change.from },
      after: { role: change.to },
    },
    clock,
  );
