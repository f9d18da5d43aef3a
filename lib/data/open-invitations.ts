import 'server-only';
import {
  canOwnClass,
  canTakeFromClass,
  type ClassAccess,
  type ClassRole,
  type Viewer,
} from '../auth/policy';
import { classAccessSelect, mayWithClass, teacherIdOf } from './access';
import { writeAudit } from './audit';
import { systemClock, type Clock } from './clock';
import { db, type Transaction } from './db';
import { idOrNull } from './ids';
import { notFound, success, type Result } from './result';
import { logSecurityEvent } from './security-log';

export type OpenInvitation = {
  invitationId: string;
  /** null when that teacher's account is gone. */
  madeBy: string | null;
  /** The viewer made it. */
  isOwn: boolean;
  /** What it makes of whoever follows it; null: an account without a class. */
  role: ClassRole | null;
  /** The class it lets into; null for an account alone. */
  className: string | null;
  /** UTC, ISO 8601. */
  madeAt: string;
  expiresAt: string;
  /** Its class is archived: it opens nothing until the class is taken back. */
  rests: boolean;
  /** Whether the viewer may take it back. */
  canTakeBack: boolean;
};

const select = {
  id: true,
  role: true,
  createdAt: true,
  expiresAt: true,
  invitedBy: { select: { id: true, displayName: true } },
  class: { select: { ...classAccessSelect, name: true } },
} as const;

const open = (now: Date) => ({ kind: 'teacher', usedAt: null, expiresAt: { gt: now } }) as const;

/**
 * Whoever made it may take it back, wherever they teach now; so may the owner of the class it lets into,
 * who answers for who teaches there, archived or not.
 */
const mayTakeBack = (viewer: Viewer, { invitedBy, class: into }: Row): boolean =>
  viewer.kind === 'teacher' &&
  (invitedBy?.id === viewer.teacherId || (into !== null && canOwnClass(viewer, into)));

type Row = {
  invitedBy: { id: string } | null;
  class: ClassAccess | null;
};

/** The links into a class that still work, latest first; for its owner and teachers, else null. */
export async function listClassInvitations(
  viewer: Viewer,
  classId: string,
  clock: Clock = systemClock,
): Promise<OpenInvitation[] | null> {
  if (!(await mayWithClass(viewer, classId, canTakeFromClass))) return null;
  return list(viewer, { classId, ...open(clock.now()) });
}

/** The links that the viewer made and that still work, into a class or to an account, latest first. */
export async function listOwnInvitations(
  viewer: Viewer,
  clock: Clock = systemClock,
): Promise<OpenInvitation[] | null> {
  if (viewer.kind !== 'teacher') return null;
  return list(viewer, { invitedById: viewer.teacherId, ...open(clock.now()) });
}

async function list(
  viewer: Viewer,
  where: ReturnType<typeof open> & ({ classId: string } | { invitedById: string }),
): Promise<OpenInvitation[]> {
  const rows = await db().invitation.findMany({
    where,
    orderBy: [{ createdAt: 'desc' }, { id: 'asc' }],
    select,
  });
  return rows.map((row) => ({
    invitationId: row.id,
    madeBy: row.invitedBy?.displayName ?? null,
    isOwn: row.invitedBy !== null && row.invitedBy.id === teacherIdOf(viewer),
    role: row.role,
    className: row.class?.name ?? null,
    madeAt: row.createdAt.toISOString(),
    expiresAt: row.expiresAt.toISOString(),
    rests: row.class !== null && row.class.archivedAt !== null,
    canTakeBack: mayTakeBack(viewer, row),
  }));
}

/**
 * The link opens nothing from now on: to whoever follows it, it is as if there had never been one. One
 * that was used, has run out or was taken back meanwhile is not found.
 */
export async function takeBackInvitation(
  viewer: Viewer,
  invitationId: unknown,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const id = idOrNull(invitationId);
  if (id === null) return notFound();
  const invitation = await db().invitation.findFirst({
    where: { id, ...open(clock.now()) },
    select,
  });
  if (invitation === null || !mayTakeBack(viewer, invitation)) return notFound();
  const gone = await db().$transaction((transaction) =>
    close(transaction, viewer, invitation, clock),
  );
  if (!gone) return notFound();
  await logSecurityEvent('invitation-taken-back', teacherIdOf(viewer), clock);
  return success(null);
}

/**
 * Takes back the links that a teacher made into a class: whoever is out of it keeps no way back in.
 * Internal: called after authorising.
 */
export async function closeInvitationsOf(
  transaction: Transaction,
  viewer: Viewer,
  { classId, teacherId }: { classId: string; teacherId: string },
  clock: Clock,
): Promise<void> {
  const made = await transaction.invitation.findMany({
    where: { classId, invitedById: teacherId, ...open(clock.now()) },
    orderBy: { id: 'asc' },
    select,
  });
  for (const invitation of made) await close(transaction, viewer, invitation, clock);
}

/** False where it was used or taken back meanwhile. */
async function close(
  transaction: Transaction,
  viewer: Viewer,
  invitation: { id: string; role: ClassRole | null; expiresAt: Date; class: ClassAccess | null },
  clock: Clock,
): Promise<boolean> {
  const { id, role, expiresAt, class: into } = invitation;
  const { count } = await transaction.invitation.deleteMany({
    where: { id, ...open(clock.now()) },
  });
  if (count === 0) return false;
  if (into !== null) {
    const entry = {
      classId: into.id,
      action: 'invitation-taken-back',
      subject: `invitation ${id}`,
      before: { role, expiresAt: expiresAt.toISOString() },
    };
    await writeAudit(transaction, viewer, entry, clock);
  }
  return true;
}
