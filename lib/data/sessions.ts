import 'server-only';
import type { Viewer } from '../auth/policy';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { idOrNull } from './ids';
import { notFound, success, type Result } from './result';
import { logSecurityEvent } from './security-log';
import { newToken, tokenHashOf } from './tokens';

const minute = 60_000;
const hour = 60 * minute;
const idleLimit = { teacher: 12 * hour, student: 4 * hour, cover: 4 * hour };
/** However busy it is, a session ends after this; a substitute's ends with the link before that. */
const longest = { teacher: 7 * 24 * hour, student: 24 * hour, cover: 24 * hour };
/** Not every page view needs a write. */
const seenEvery = minute;

export type SessionSubject = { teacherId: string } | { studentId: string } | { coverId: string };
export type SessionSummary = {
  id: string;
  /** UTC, ISO 8601. */
  createdAt: string;
  lastSeenAt: string;
  /** "Firefox on Windows": from the browser's own words, never an address. */
  device: string;
  current: boolean;
};

/** Opens a session and ends the one that this browser had: a token never outlives a sign-in. */
export async function openSession(
  subject: SessionSubject,
  options: { device: string; previousToken: string | null },
  clock: Clock = systemClock,
): Promise<string> {
  const token = newToken();
  const now = clock.now();
  if (options.previousToken !== null) await endSessionOf(options.previousToken, clock);
  await db().session.create({
    data: {
      ...subject,
      tokenHash: tokenHashOf(token),
      device: options.device.slice(0, 80),
      createdAt: now,
      lastSeenAt: now,
    },
  });
  return token;
}

type Times = { createdAt: Date; lastSeenAt: Date };
const expired = (session: Times, now: Date, idle: number, whole: number): boolean =>
  now.getTime() - session.lastSeenAt.getTime() >= idle ||
  now.getTime() - session.createdAt.getTime() >= whole;

const studentIdle = (idleSignOutMinutes: number | null): number =>
  idleSignOutMinutes === null ? idleLimit.student : idleSignOutMinutes * minute;

const holderSelect = {
  teacher: { select: { id: true, displayName: true } },
  student: {
    select: {
      id: true,
      classId: true,
      displayName: true,
      leftAt: true,
      class: { select: { idleSignOutMinutes: true, archivedAt: true } },
    },
  },
  cover: {
    select: {
      id: true,
      classId: true,
      expiresAt: true,
      endedAt: true,
      class: { select: { archivedAt: true } },
    },
  },
} as const;

/**
 * Who holds this token; a session that idled too long, grew too old or was ended opens nothing. Asking
 * counts as use and puts the idle time off, unless it is a page that asks by itself.
 */
export async function viewerOfToken(
  token: string,
  clock: Clock = systemClock,
  { countsAsUse = true }: { countsAsUse?: boolean } = {},
): Promise<Viewer> {
  const session = await db().session.findUnique({
    where: { tokenHash: tokenHashOf(token) },
    select: { id: true, createdAt: true, lastSeenAt: true, endedAt: true, ...holderSelect },
  });
  if (session === null || session.endedAt !== null) return { kind: 'anonymous' };
  const now = clock.now();
  const viewer = holderOf(session, now);
  if (viewer.kind === 'anonymous') return viewer;
  if (countsAsUse && now.getTime() - session.lastSeenAt.getTime() >= seenEvery) {
    await db().session.updateMany({ where: { id: session.id }, data: { lastSeenAt: now } });
  }
  return viewer;
}

type Holder = Times & {
  teacher: { id: string; displayName: string } | null;
  student: {
    id: string;
    classId: string;
    displayName: string;
    leftAt: Date | null;
    class: { idleSignOutMinutes: number | null; archivedAt: Date | null };
  } | null;
  cover: {
    id: string;
    classId: string;
    expiresAt: Date;
    endedAt: Date | null;
    class: { archivedAt: Date | null };
  } | null;
};

function holderOf(session: Holder, now: Date): Viewer {
  const nobody = { kind: 'anonymous' } as const;
  const { teacher, student, cover } = session;
  if (teacher !== null) {
    if (expired(session, now, idleLimit.teacher, longest.teacher)) return nobody;
    return { kind: 'teacher', teacherId: teacher.id, displayName: teacher.displayName };
  }
  if (student !== null) {
    const { id, classId, displayName, leftAt, class: schoolClass } = student;
    if (leftAt !== null || schoolClass.archivedAt !== null) return nobody;
    const idle = studentIdle(schoolClass.idleSignOutMinutes);
    if (expired(session, now, idle, longest.student)) return nobody;
    return { kind: 'student', studentId: id, classId, displayName };
  }
  if (cover !== null) {
    if (!opens(cover, now) || cover.class.archivedAt !== null) return nobody;
    if (expired(session, now, idleLimit.cover, longest.cover)) return nobody;
    return {
      kind: 'cover',
      coverId: cover.id,
      classId: cover.classId,
      displayName: 'Cover teacher',
    };
  }
  return nobody;
}

const opens = (link: { expiresAt: Date; endedAt: Date | null }, now: Date): boolean =>
  link.endedAt === null && link.expiresAt > now;

export async function endSessionOf(token: string, clock: Clock = systemClock): Promise<void> {
  const tokenHash = tokenHashOf(token);
  const { count } = await db().session.updateMany({
    where: { tokenHash, endedAt: null },
    data: { endedAt: clock.now() },
  });
  if (count > 0) await logSecurityEvent('signed-out', null, clock);
}

type Owner = { teacherId: string } | { studentId: string };
const ownedBy = (viewer: Viewer): Owner | null => {
  switch (viewer.kind) {
    case 'teacher':
      return { teacherId: viewer.teacherId };
    case 'student':
      return { studentId: viewer.studentId };
    // A substitute has one session of a day: the link ends it, and there is nothing to choose among.
    case 'cover':
    case 'anonymous':
      return null;
  }
};

/** The viewer's own sessions that are still good, latest first. */
export async function listSessionsOf(
  viewer: Viewer,
  currentToken: string | null,
  clock: Clock = systemClock,
): Promise<SessionSummary[]> {
  const owner = ownedBy(viewer);
  if (owner === null) return [];
  const sessions = await db().session.findMany({
    where: { ...owner, endedAt: null },
    orderBy: { lastSeenAt: 'desc' },
    select: {
      id: true,
      tokenHash: true,
      createdAt: true,
      lastSeenAt: true,
      device: true,
      student: { select: { class: { select: { idleSignOutMinutes: true } } } },
    },
  });
  const now = clock.now();
  const currentHash = currentToken === null ? null : tokenHashOf(currentToken);
  return sessions
    .filter((session) =>
      session.student === null
        ? !expired(session, now, idleLimit.teacher, longest.teacher)
        : !expired(
            session,
            now,
            studentIdle(session.student.class.idleSignOutMinutes),
            longest.student,
          ),
    )
    .map(({ id, tokenHash, createdAt, lastSeenAt, device }) => ({
      id,
      createdAt: createdAt.toISOString(),
      lastSeenAt: lastSeenAt.toISOString(),
      device,
      current: tokenHash === currentHash,
    }));
}

/** Ends one of the viewer's own sessions, wherever it is open. */
export async function endSessionById(
  viewer: Viewer,
  sessionId: unknown,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const [owner, id] = [ownedBy(viewer), idOrNull(sessionId)];
  if (owner === null || id === null) return notFound();
  const { count } = await db().session.updateMany({
    where: { id, ...owner, endedAt: null },
    data: { endedAt: clock.now() },
  });
  if (count === 0) return notFound();
  const subject = 'teacherId' in owner ? owner.teacherId : owner.studentId;
  await logSecurityEvent('session-ended', subject, clock);
  return success(null);
}
