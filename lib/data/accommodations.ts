import 'server-only';
import { z } from 'zod';
import { canTeachClass, type Viewer } from '../auth/policy';
import { classOfStudent } from './access';
import { writeAudit } from './audit';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { extraTimes } from './extra-time-input';
import { failure, notFound, success, type Result } from './result';

export async function setExtraAttempts(
  viewer: Viewer,
  studentId: string,
  extraAttempts: number,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const classId = await classOfStudent(viewer, studentId, canTeachClass);
  if (classId === null) return notFound();
  const parsed = z.number().int().min(0).max(20).safeParse(extraAttempts);
  if (!parsed.success) {
    return failure('bad-input', 'Give a whole number from 0 to 20.', 'extraAttempts');
  }
  await db().$transaction(async (transaction) => {
    await transaction.accommodation.upsert({
      where: { studentId },
      create: { studentId, extraAttempts: parsed.data },
      update: { extraAttempts: parsed.data },
    });
    await writeAudit(
      transaction,
      viewer,
      {
        classId,
        action: 'extra-attempts',
        subject: `student ${studentId}`,
        after: { extraAttempts: parsed.data },
      },
      clock,
    );
  });
  return success(null);
}

/** How much longer the student may take where time counts; it holds for attempts not yet started. */
export async function setExtraTime(
  viewer: Viewer,
  studentId: string,
  extraTime: unknown,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const classId = await classOfStudent(viewer, studentId, canTeachClass);
  if (classId === null) return notFound();
  const parsed = z.enum(extraTimes).safeParse(extraTime);
  if (!parsed.success) {
    return failure('bad-input', 'Choose one of the times offered.', 'extraTime');
  }
  await db().$transaction(async (transaction) => {
    await transaction.accommodation.upsert({
      where: { studentId },
      create: { studentId, extraTime: parsed.data },
      update: { extraTime: parsed.data },
    });
    const after = { extraTime: parsed.data };
    const entry = { classId, action: 'extra-time', subject: `student ${studentId}`, after };
    await writeAudit(transaction, viewer, entry, clock);
  });
  return success(null);
}
