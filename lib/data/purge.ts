import 'server-only';
import { db } from './db';

const hourMs = 3_600_000;
/** The longest any session may be idle: a teacher's; see lib/auth/session.ts. */
const longestIdleHours = 12;

export type PurgeReport = {
  classes: readonly { name: string; students: number; retentionDate: string }[];
  sessions: number;
  invitations: number;
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

/** What {@link purge} would delete at this instant. */
export async function findExpired(now: Date): Promise<PurgeReport> {
  const classes = await db().class.findMany({
    where: { retentionDate: { lte: now } },
    select: { name: true, retentionDate: true, _count: { select: { students: true } } },
    orderBy: { retentionDate: 'asc' },
  });
  return {
    classes: classes.map(({ name, retentionDate, _count }) => ({
      name,
      students: _count.students,
      retentionDate: retentionDate.toISOString(),
    })),
    sessions: await db().session.count({ where: deadSessions(now) }),
    invitations: await db().invitation.count({ where: deadInvitations(now) }),
  };
}

/**
 * Deletes classes past their retention date with all that belongs to them, and sessions and
 * invitations that can no longer be used. All or nothing.
 */
export async function purge(now: Date): Promise<PurgeReport> {
  const report = await findExpired(now);
  await db().$transaction([
    db().class.deleteMany({ where: { retentionDate: { lte: now } } }),
    db().session.deleteMany({ where: deadSessions(now) }),
    db().invitation.deleteMany({ where: deadInvitations(now) }),
  ]);
  return report;
}
