import 'server-only';
import { canTakeFromClass, canTeachClass, type Viewer } from '../auth/policy';
import { beginTry } from '../auth/throttle';
import { endOfLocalDay } from '../sky/local-time';
import { classAccessSelect, mayWithClass, teacherIdOf } from './access';
import { writeAudit } from './audit';
import { holdClass } from './class-in-line';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { failure, notFound, success, type Result } from './result';
import { logSecurityEvent } from './security-log';
import type { TryOrigin } from './sign-in';
import { newToken, tokenHashOf } from './tokens';

const day = 24 * 3600 * 1000;
/** More than this at once and nobody knows any longer who has one. */
const mostOpen = 5;
/** How far back the list of links reaches: long enough to see last week's. */
const listedDays = 14;

export type CoverLinkSummary = {
  coverId: string;
  /** null when that teacher's account is gone. */
  madeBy: string | null;
  /** UTC, ISO 8601. */
  madeAt: string;
  expiresAt: string;
  /** Set when somebody ended it before its time. */
  endedAt: string | null;
  open: boolean;
  /** On how many devices it was opened. */
  timesOpened: number;
};

/** "Until the end of today" on the class's clock, and never longer than 24 hours. */
function endOfCover(now: Date, timeZone: string): Date {
  const midnight = Date.parse(endOfLocalDay(now.toISOString(), timeZone));
  return new Date(Math.min(midnight, now.getTime() + day));
}

/**
 * A link for a substitute teacher: one class, today, to read and to let students in. The token leaves
 * here once; only its hash is kept.
 */
export async function createCoverLink(
  viewer: Viewer,
  classId: string,
  clock: Clock = systemClock,
): Promise<Result<{ token: string; expiresAt: string }>> {
  if (!(await mayWithClass(viewer, classId, canTeachClass))) return notFound();
  const now = clock.now();
  const token = newToken();
  return db().$transaction(async (transaction) => {
    await holdClass(transaction, classId);
    const open = { classId, endedAt: null, expiresAt: { gt: now } };
    if ((await transaction.coverLink.count({ where: open })) >= mostOpen) {
      return failure(
        'too-many',
        `There are ${mostOpen} cover links for today already. End one of them first.`,
      );
    }
    const { timeZone } = await transaction.class.findUniqueOrThrow({
      where: { id: classId },
      select: { timeZone: true },
    });
    const expiresAt = endOfCover(now, timeZone);
    const { id } = await transaction.coverLink.create({
      data: {
        classId,
        tokenHash: tokenHashOf(token),
        createdById: teacherIdOf(viewer),
        createdAt: now,
        expiresAt,
      },
      select: { id: true },
    });
    const after = { expiresAt: expiresAt.toISOString() };
    const entry = { classId, action: 'cover-link-made', subject: `cover ${id}`, after };
    await writeAudit(transaction, viewer, entry, clock);
    return success({ token, expiresAt: expiresAt.toISOString() });
  });
}

/** The links of the last fortnight, latest first; for the class's owner and teachers. */
export async function listCoverLinks(
  viewer: Viewer,
  classId: string,
  clock: Clock = systemClock,
): Promise<CoverLinkSummary[] | null> {
  if (!(await mayWithClass(viewer, classId, canTakeFromClass))) return null;
  const now = clock.now();
  const links = await db().coverLink.findMany({
    where: { classId, createdAt: { gt: new Date(now.getTime() - listedDays * day) } },
    orderBy: [{ createdAt: 'desc' }, { id: 'asc' }],
    select: {
      id: true,
      createdAt: true,
      expiresAt: true,
      endedAt: true,
      createdBy: { select: { displayName: true } },
      _count: { select: { sessions: true } },
    },
  });
  return links.map((link) => ({
    coverId: link.id,
    madeBy: link.createdBy?.displayName ?? null,
    madeAt: link.createdAt.toISOString(),
    expiresAt: link.expiresAt.toISOString(),
    endedAt: link.endedAt?.toISOString() ?? null,
    open: link.endedAt === null && link.expiresAt > now,
    timesOpened: link._count.sessions,
  }));
}

/** At once: whoever came in by it is out with the next click. Ending it twice is no fault. */
export async function endCoverLink(
  viewer: Viewer,
  coverId: string,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const link = await db().coverLink.findUnique({
    where: { id: coverId },
    select: { class: { select: classAccessSelect } },
  });
  if (link === null || !canTeachClass(viewer, link.class)) return notFound();
  const now = clock.now();
  await db().$transaction(async (transaction) => {
    const { count } = await transaction.coverLink.updateMany({
      where: { id: coverId, endedAt: null },
      data: { endedAt: now },
    });
    if (count === 0) return;
    await transaction.session.updateMany({
      where: { coverId, endedAt: null },
      data: { endedAt: now },
    });
    const entry = {
      classId: link.class.id,
      action: 'cover-link-ended',
      subject: `cover ${coverId}`,
    };
    await writeAudit(transaction, viewer, entry, clock);
  });
  return success(null);
}

/**
 * The link behind a token, for a session to be opened on it. A wrong one is counted like a failed
 * sign-in; unknown, ended, run out and archived all look the same.
 */
export async function checkCoverToken(
  token: string,
  origin: TryOrigin,
  clock: Clock = systemClock,
): Promise<Result<{ coverId: string; classId: string }>> {
  const tokenHash = tokenHashOf(token);
  const attempt = await beginTry({ account: `cover ${tokenHash}`, ...origin });
  if (!attempt.allowed) {
    await logSecurityEvent('sign-in-throttled', null, clock);
    return failure('too-many-tries', 'That was tried too often. Wait ten minutes, then try again.');
  }
  const link = await db().coverLink.findFirst({
    where: {
      tokenHash,
      endedAt: null,
      expiresAt: { gt: clock.now() },
      class: { archivedAt: null },
    },
    select: { id: true, classId: true },
  });
  if (link === null) {
    await attempt.failed();
    await logSecurityEvent('sign-in-failed', null, clock);
    return failure(
      'cover-refused',
      'This link does not open any more. Ask the class’s teacher for a new one.',
    );
  }
  await attempt.succeeded();
  await logSecurityEvent('cover-opened', link.classId, clock);
  return success({ coverId: link.id, classId: link.classId });
}
