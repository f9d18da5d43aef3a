import 'server-only';
import { z } from 'zod';
import { canRunClass, canTeachClass, type Viewer } from '../auth/policy';
import { mayWithClass } from './access';
import { writeAudit } from './audit';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { firstMessage, nameSchema } from './names';
import { failure, notFound, success, type Result } from './result';

export const classNameSchema = nameSchema('The name of the class', 80);

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
