import 'server-only';
import { canTeachClass, type Viewer } from '../auth/policy';
import { classOfAssignment, mayWithClass } from './access';
import { readAssignmentInput } from './assignment-parts';
import { newParts, planReplacement, replaceParts } from './assignment-writing';
import { writeAudit } from './audit';
import { systemClock, type Clock } from './clock';
import { countChecks } from './count-checks';
import { db } from './db';
import { failure, notFound, success, type Result } from './result';
import { columnsOfPolicy } from './stored-policy';

/** `input` is read with assignmentInputSchema. */
export async function createAssignment(
  viewer: Viewer,
  classId: string,
  input: unknown,
  clock: Clock = systemClock,
): Promise<Result<{ assignmentId: string }>> {
  if (!(await mayWithClass(viewer, classId, canTeachClass))) return notFound();
  const read = readAssignmentInput(input);
  if (!read.ok) return read;
  const { title, dueTimeZone, policy, weight, needsSignOff } = read.value;
  const assignmentId = await db().$transaction(async (transaction) => {
    const parts = await newParts(transaction, classId, read.value, clock.now());
    const { id } = await transaction.assignment.create({
      data: {
        classId,
        title,
        dueTimeZone,
        weight,
        needsSignOff,
        createdAt: clock.now(),
        ...columnsOfPolicy(policy),
        parts: { create: parts },
      },
      select: { id: true },
    });
    return id;
  });
  return success({ assignmentId });
}

/**
 * What is under way keeps the sky and the policy it started with; the answer says how many those are.
 * Refused as a whole where a part that students have started would go (see planParts).
 */
export async function updateAssignment(
  viewer: Viewer,
  assignmentId: string,
  input: unknown,
  expectedVersion: number | null = null,
  clock: Clock = systemClock,
): Promise<Result<{ attemptsUnderWay: number }>> {
  const classId = await classOfAssignment(viewer, assignmentId, canTeachClass);
  if (classId === null) return notFound();
  const read = readAssignmentInput(input);
  if (!read.ok) return read;
  const next = read.value;
  const saved = await db().$transaction(async (transaction): Promise<Result<null>> => {
    // Everything that may be refused comes before anything is written.
    const current = await transaction.assignment.findUnique({
      where: { id: assignmentId },
      select: { version: true },
    });
    if (current === null || (expectedVersion !== null && current.version !== expectedVersion))
      return changedMeanwhile();
    const planned = await planReplacement(transaction, assignmentId, next);
    if (!planned.ok) return planned;
    const { count } = await transaction.assignment.updateMany({
      where: {
        id: assignmentId,
        ...(expectedVersion === null ? {} : { version: expectedVersion }),
      },
      data: {
        title: next.title,
        dueTimeZone: next.dueTimeZone,
        weight: next.weight,
        needsSignOff: next.needsSignOff,
        ...columnsOfPolicy(next.policy),
        version: { increment: 1 },
      },
    });
    if (count === 0) return changedMeanwhile();
    await replaceParts(transaction, assignmentId, { ...planned.value, next, now: clock.now() });
    await writeAudit(
      transaction,
      viewer,
      {
        classId,
        action: 'assignment-changed',
        subject: `assignment ${assignmentId}`,
        after: { title: next.title, policy: next.policy },
      },
      clock,
    );
    return success(null);
  });
  if (!saved.ok) return saved;
  return success({ attemptsUnderWay: (await countChecks(assignmentId)).underWay });
}

const changedMeanwhile = () =>
  failure(
    'changed-meanwhile',
    'Somebody else has changed this assignment since you opened it. Open it again: nothing of theirs was overwritten.',
  );
