import 'server-only';
import { canOwnClass, canRunClass, type Viewer } from '../auth/policy';
import { mayWithClass } from './access';
import { writeAudit } from './audit';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { notFound, success, type Result } from './result';

/**
 * Puts a class away: everything stays to be read and taken out, nothing changes any more, and its
 * students and substitutes are out at once.
 */
export async function archiveClass(
  viewer: Viewer,
  classId: string,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  if (!(await mayWithClass(viewer, classId, canRunClass))) return notFound();
  const now = clock.now();
  await db().$transaction(async (transaction) => {
    const { count } = await transaction.class.updateMany({
      where: { id: classId, archivedAt: null },
      data: { archivedAt: now },
    });
    if (count === 0) return;
    // Ended, not only refused: a class that is taken back must not revive last year's sign-ins.
    await transaction.coverLink.updateMany({
      where: { classId, endedAt: null },
      data: { endedAt: now },
    });
    await transaction.session.updateMany({
      where: { endedAt: null, OR: [{ student: { classId } }, { cover: { classId } }] },
      data: { endedAt: now },
    });
    const entry = { classId, action: 'class-archived', subject: `class ${classId}` };
    await writeAudit(transaction, viewer, entry, clock);
  });
  return success(null);
}

/** As it was when it was archived. Doing it twice is no fault. */
export async function takeBackClass(
  viewer: Viewer,
  classId: string,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  if (!(await mayWithClass(viewer, classId, canOwnClass))) return notFound();
  await db().$transaction(async (transaction) => {
    const { count } = await transaction.class.updateMany({
      where: { id: classId, archivedAt: { not: null } },
      data: { archivedAt: null },
    });
    if (count === 0) return;
    const entry = { classId, action: 'class-taken-back', subject: `class ${classId}` };
    await writeAudit(transaction, viewer, entry, clock);
  });
  return success(null);
}
