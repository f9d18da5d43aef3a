import 'server-only';
import { canOwnClass, canTeachClass, type Viewer } from '../auth/policy';
import { classOfAssignment, mayWithClass } from './access';
import { partsSelect, readParts } from './assignment-parts';
import { writeAudit } from './audit';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { failure, notFound, success, type Result } from './result';

/** Publishing again changes nothing. */
export async function publishAssignment(
  viewer: Viewer,
  assignmentId: string,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const classId = await classOfAssignment(viewer, assignmentId, canTeachClass);
  if (classId === null) return notFound();
  const now = clock.now();
  const row = await db().assignment.findUnique({
    where: { id: assignmentId },
    select: { dueAt: true, state: true },
  });
  if (row === null) return notFound();
  if (row.state === 'published') return success(null);
  if (row.dueAt !== null && row.dueAt <= now) {
    return failure(
      'due-in-the-past',
      'The due time is over already. Set a later one, then publish.',
      'dueAt',
    );
  }
  await db().$transaction(async (transaction) => {
    const { count } = await transaction.assignment.updateMany({
      where: { id: assignmentId, state: 'draft' },
      data: { state: 'published', publishedAt: now, version: { increment: 1 } },
    });
    const subject = `assignment ${assignmentId}`;
    if (count > 0)
      await writeAudit(
        transaction,
        viewer,
        { classId, action: 'assignment-published', subject },
        clock,
      );
  });
  return success(null);
}

/** Shows results that wait for the teacher's word. There is no way back: what was seen was seen. */
export async function releaseFeedback(
  viewer: Viewer,
  assignmentId: string,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const classId = await classOfAssignment(viewer, assignmentId, canTeachClass);
  if (classId === null) return notFound();
  await db().$transaction(async (transaction) => {
    const { count } = await transaction.assignment.updateMany({
      where: { id: assignmentId, feedbackReleasedAt: null },
      data: { feedbackReleasedAt: clock.now() },
    });
    const subject = `assignment ${assignmentId}`;
    if (count > 0)
      await writeAudit(
        transaction,
        viewer,
        { classId, action: 'feedback-released', subject },
        clock,
      );
  });
  return success(null);
}

/** Teachers may take back a draft; what students have worked on only the owner deletes. */
export async function deleteAssignment(
  viewer: Viewer,
  assignmentId: string,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const classId = await classOfAssignment(viewer, assignmentId, canTeachClass);
  if (classId === null) return notFound();
  const attempts = await db().attempt.count({ where: { assignmentId } });
  if (attempts > 0 && !(await mayWithClass(viewer, classId, canOwnClass))) {
    return failure(
      'owner-only',
      'Students have worked on this: only the owner of the class can delete it.',
    );
  }
  await db().$transaction(async (transaction) => {
    const parts = await transaction.assignmentPart.findMany({
      where: { assignmentId },
      ...partsSelect,
    });
    const { scenarioId } = readParts(parts);
    await transaction.assignment.delete({ where: { id: assignmentId } });
    await transaction.scenario.delete({ where: { id: scenarioId } });
    const subject = `assignment ${assignmentId}`;
    await writeAudit(
      transaction,
      viewer,
      { classId, action: 'assignment-deleted', subject },
      clock,
    );
  });
  return success(null);
}
