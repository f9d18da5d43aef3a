import 'server-only';
import { db, type Transaction } from './db';

const hourMs = 3_600_000;
/** The longest any session may be idle: a teacher's; see lib/auth/session.ts. */
const longestIdleHours = 12;

export type PurgeReport = {
  classes: readonly { name: string; students: number; retentionDate: string }[];
  sessions: number;
  invitations: number;
  /** A substitute's links whose day is over or that were ended. */
  coverLinks: number;
  /** Entries of the security log: old ones, and those about who or what is no more. */
  securityEvents: number;
};

const deadSessions = (now: Date) => ({
  OR: [
    { endedAt: { not: null } },
    { lastSeenAt: { lt: new Date(now.getTime() - longestIdleHours * hourMs) } },
  ],
});
const deadInvitations = (now: Date) => ({
  OR: [{ usedAt: { not: null } }, { expiresAt: { lt: now } }],
});

const deadCoverLinks = (now: Date) => ({
  OR: [{ endedAt: { not: null } }, { expiresAt: { lt: now } }],
});

/** "Whether anybody tried" is of no use after a month: the design's limit for the security log. */
const securityLogDays = 30;
const oldSecurityEvents = (now: Date) => ({
  at: { lt: new Date(now.getTime() - securityLogDays * 24 * hourMs) },
});

/** Younger entries whose subject is gone, or goes with a class that is past its date. */
async function orphanedSecurityEvents(client: Transaction, now: Date): Promise<string[]> {
  const events = await client.securityEvent.findMany({
    where: { subject: { not: null }, NOT: oldSecurityEvents(now) },
    select: { id: true, subject: true },
  });
  const kept = { retentionDate: { gt: now } };
  const teachers = await client.teacher.findMany({ select: { id: true } });
  const students = await client.student.findMany({ where: { class: kept }, select: { id: true } });
  const classes = await client.class.findMany({ where: kept, select: { id: true } });
  const known = new Set([...teachers, ...students, ...classes].map(({ id }) => id));
  return events
    .filter(({ subject }) => subject !== null && !known.has(subject))
    .map(({ id }) => id);
}

/** What {@link purge} would delete at this instant. */
export const findExpired = (now: Date): Promise<PurgeReport> => expiredIn(db(), now);

async function expiredIn(client: Transaction, now: Date): Promise<PurgeReport> {
  const classes = await client.class.findMany({
    where: { retentionDate: { lte: now } },
    select: { name: true, retentionDate: true, _count: { select: { students: true } } },
    orderBy: { retentionDate: 'asc' },
  });
  const orphaned = await orphanedSecurityEvents(client, now);
  return {
    classes: classes.map(({ name, retentionDate, _count }) => ({
      name,
      students: _count.students,
      retentionDate: retentionDate.toISOString(),
    })),
    sessions: await client.session.count({ where: deadSessions(now) }),
    invitations: await client.invitation.count({ where: deadInvitations(now) }),
    coverLinks: await client.coverLink.count({ where: deadCoverLinks(now) }),
    securityEvents:
      (await client.securityEvent.count({ where: oldSecurityEvents(now) })) + orphaned.length,
  };
}

/** A whole school's year may go at once; the usual five seconds are for pages. */
const longWork = { timeout: 600_000 };
/** Well below the number of values that a statement may carry. */
const idsAtOnce = 500;

/**
 * Deletes classes past their retention date with all that belongs to them, sessions, invitations
 * and cover links that can no longer be used, and of the security log what is old or about nobody. All or nothing.
 */
export async function purge(now: Date): Promise<PurgeReport> {
  return db().$transaction(async (transaction) => {
    const report = await expiredIn(transaction, now);
    const orphaned = await orphanedSecurityEvents(transaction, now);
    for (let from = 0; from < orphaned.length; from += idsAtOnce) {
      const ids = orphaned.slice(from, from + idsAtOnce);
      await transaction.securityEvent.deleteMany({ where: { id: { in: ids } } });
    }
    await transaction.securityEvent.deleteMany({ where: oldSecurityEvents(now) });
    await transaction.class.deleteMany({ where: { retentionDate: { lte: now } } });
    await transaction.session.deleteMany({ where: deadSessions(now) });
    await transaction.invitation.deleteMany({ where: deadInvitations(now) });
    await transaction.coverLink.deleteMany({ where: deadCoverLinks(now) });
    return report;
  }, longWork);
}
