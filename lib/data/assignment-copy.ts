import 'server-only';
import { z } from 'zod';
import { canTeachClass, type Viewer } from '../auth/policy';
import { classOfAssignment, mayWithClass } from './access';
import { partsSelect, readParts } from './assignment-parts';
import { newParts } from './assignment-writing';
import { writeAudit } from './audit';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { firstField, firstMessage } from './names';
import { failure, notFound, success, type Result } from './result';
import { policySelect } from './stored-policy';

const copySchema = z.strictObject({
  classId: z.string().max(60),
  title: z.string().trim().min(1, 'Give the copy a title.').max(120),
  /** UTC, ISO 8601; null: no due time. */
  dueAt: z.iso.datetime({ error: 'The due time is not a date and time.' }).nullable(),
});

/**
 * A draft in the same or another class, with the same parts, lessons, evening and rules. Nobody's work,
 * marks or extensions go along. The viewer teaches both classes. Feedback after the due time waits for the
 * teacher's word where the copy has none.
 */
export async function copyAssignment(
  viewer: Viewer,
  assignmentId: string,
  input: unknown,
  clock: Clock = systemClock,
): Promise<Result<{ assignmentId: string; classId: string }>> {
  const from = await classOfAssignment(viewer, assignmentId, canTeachClass);
  if (from === null) return notFound();
  const parsed = copySchema.safeParse(input);
  if (!parsed.success)
    return failure('bad-input', firstMessage(parsed.error), firstField(parsed.error));
  const { classId, title } = parsed.data;
  if (!(await mayWithClass(viewer, classId, canTeachClass))) return notFound();
  const dueAt = parsed.data.dueAt === null ? null : new Date(parsed.data.dueAt);
  const [source, target] = await Promise.all([
    db().assignment.findUnique({
      where: { id: assignmentId },
      select: { ...policySelect, weight: true, needsSignOff: true, parts: partsSelect },
    }),
    db().class.findUnique({ where: { id: classId }, select: { timeZone: true } }),
  ]);
  if (source === null || target === null) return notFound();
  const { parts: rows, ...settings } = source;
  const { parts, ...rest } = readParts(rows);
  const waits = settings.feedback === 'after_due' && dueAt === null;
  const id = await db().$transaction(async (transaction) => {
    const copied = await newParts(
      transaction,
      classId,
      // Without their ids, which are the first one's.
      {
        ...rest,
        parts: parts.map(({ lab, templates, windowMinutes, minutesAllowed, weight }) => ({
          lab,
          templates,
          windowMinutes,
          minutesAllowed,
          weight,
        })),
      },
      clock.now(),
    );
    const created = await transaction.assignment.create({
      data: {
        ...settings,
        classId,
        title,
        dueAt,
        dueTimeZone: target.timeZone,
        createdAt: clock.now(),
        ...(waits ? { feedback: 'when_released' as const } : {}),
        parts: { create: copied },
      },
      select: { id: true },
    });
    const entry = {
      classId,
      action: 'assignment-copied',
      subject: `assignment ${created.id}`,
      after: { from: assignmentId, title },
    };
    await writeAudit(transaction, viewer, entry, clock);
    return created.id;
  });
  return success({ assignmentId: id, classId });
}
