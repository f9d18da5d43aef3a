import 'server-only';
import { z } from 'zod';
import { canTeachClass, type Viewer } from '../auth/policy';
import { classOfAssignment } from './access';
import { writeAudit } from './audit';
import { holdClass } from './class-in-line';
import { cellSubject, type CellAction } from './cell-audit';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { firstField, firstMessage } from './names';
import { changedMeanwhile, isAsOpened, openedOnSchema, type OpenedOn } from './opened-on';
import { failure, notFound, success, type Result } from './result';

const note = z
  .string()
  .trim()
  .min(1, 'Write a short note: why? It is kept with the change.')
  .max(500, 'Keep the note below 500 characters.');
const target = {
  studentId: z.string(),
  assignmentId: z.string(),
  note,
  openedOn: openedOnSchema,
};
const markSchema = z.strictObject({
  ...target,
  mark: z
    .number({ error: 'Give the mark as a number.' })
    .min(0, 'A mark lies between 0 and 100.')
    .max(100, 'A mark lies between 0 and 100.')
    .nullable(),
});
const excuseSchema = z.strictObject({ ...target, excused: z.boolean().default(true) });
const extensionSchema = z.strictObject({
  ...target,
  dueAt: z.iso.datetime({ error: 'The new due time is not a date and time.' }).nullable(),
});

/** The class, if the viewer teaches it and the student is in it. */
async function classFor(
  viewer: Viewer,
  studentId: string,
  assignmentId: string,
): Promise<string | null> {
  const classId = await classOfAssignment(viewer, assignmentId, canTeachClass);
  if (classId === null) return null;
  return (await db().student.count({ where: { id: studentId, classId } })) === 0 ? null : classId;
}

const targetSchema = z.object({
  studentId: z.string().max(100),
  assignmentId: z.string().max(100),
});

/**
 * First whose work it is, then what is to be done with it: whoever may not know of the thing does not
 * learn what is wrong with the input either.
 */
async function read<T>(
  viewer: Viewer,
  schema: z.ZodType<T>,
  input: unknown,
): Promise<Result<{ classId: string; decision: T }>> {
  const about = targetSchema.safeParse(input);
  if (!about.success) return notFound();
  const classId = await classFor(viewer, about.data.studentId, about.data.assignmentId);
  if (classId === null) return notFound();
  const parsed = schema.safeParse(input);
  return parsed.success
    ? success({ classId, decision: parsed.data })
    : failure('bad-input', firstMessage(parsed.error), firstField(parsed.error));
}

/** A decision that decides nothing writes nothing; another reason for what stands is a change. */
const nothingChanged = () => failure('nothing-changed', 'Nothing has changed.');

/** Both kinds of decision are one row; each change leaves the other half as it was. */
async function decide(
  viewer: Viewer,
  classId: string,
  decision: { studentId: string; assignmentId: string; note: string; openedOn?: OpenedOn },
  change: { mark: number | null } | { excused: boolean },
  action: CellAction,
  clock: Clock,
): Promise<Result<null>> {
  const { studentId, assignmentId, note: reason, openedOn } = decision;
  return db().$transaction(async (transaction) => {
    await holdClass(transaction, classId);
    const where = { studentId_assignmentId: { studentId, assignmentId } };
    const select = { mark: true, excused: true, note: true } as const;
    const found = await transaction.override.findUnique({
      where,
      select: { ...select, changedAt: true },
    });
    if (!isAsOpened(openedOn, found?.changedAt)) return changedMeanwhile();
    const before = found && { mark: found.mark, excused: found.excused, note: found.note };
    const same =
      'mark' in change
        ? change.mark === (found?.mark ?? null)
        : change.excused === (found?.excused ?? false);
    const nothingStands = 'mark' in change ? change.mark === null : !change.excused;
    if (same && (nothingStands || found?.note === reason)) return nothingChanged();
    const data = { ...change, note: reason, changedAt: clock.now() };
    const after = await transaction.override.upsert({
      where,
      create: { studentId, assignmentId, ...data },
      update: data,
      select,
    });
    const subject = cellSubject({ studentId, assignmentId });
    const entry = { classId, action, subject, before: before ?? {}, after, reason };
    await writeAudit(transaction, viewer, entry, clock);
    return success(null);
  });
}

/**
 * The teacher's mark stands over the computed one, which is kept; null takes it back. The note is
 * required and goes into the audit.
 */
export async function overrideMark(
  viewer: Viewer,
  input: {
    studentId: string;
    assignmentId: string;
    mark: number | null;
    note: string;
    openedOn?: OpenedOn;
  },
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const parsed = await read(viewer, markSchema, input);
  if (!parsed.ok) return parsed;
  const { classId, decision } = parsed.value;
  return decide(viewer, classId, decision, { mark: decision.mark }, 'mark-overridden', clock);
}

/** Takes the student out of the reckoning for this assignment; `excused: false` takes it back. */
export async function excuse(
  viewer: Viewer,
  input: {
    studentId: string;
    assignmentId: string;
    note: string;
    excused?: boolean;
    openedOn?: OpenedOn;
  },
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const parsed = await read(viewer, excuseSchema, input);
  if (!parsed.ok) return parsed;
  const { classId, decision } = parsed.value;
  return decide(viewer, classId, decision, { excused: decision.excused }, 'excused', clock);
}

/** A due time of the student's own, earlier or later; null takes it back. */
export async function extendDue(
  viewer: Viewer,
  input: {
    studentId: string;
    assignmentId: string;
    dueAt: string | null;
    note: string;
    openedOn?: OpenedOn;
  },
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const parsed = await read(viewer, extensionSchema, input);
  if (!parsed.ok) return parsed;
  const { classId, decision } = parsed.value;
  const { studentId, assignmentId, dueAt, note: reason, openedOn } = decision;
  return db().$transaction(async (transaction) => {
    await holdClass(transaction, classId);
    const where = { assignmentId_studentId: { assignmentId, studentId } };
    const before = await transaction.extension.findUnique({
      where,
      select: { dueAt: true, note: true, changedAt: true },
    });
    if (!isAsOpened(openedOn, before?.changedAt)) return changedMeanwhile();
    const stood = before?.dueAt.getTime() ?? null;
    const wanted = dueAt === null ? null : new Date(dueAt).getTime();
    if (stood === wanted && (before === null || before.note === reason)) return nothingChanged();
    if (dueAt === null) {
      await transaction.extension.deleteMany({ where: { assignmentId, studentId } });
    } else {
      const data = { dueAt: new Date(dueAt), note: reason, changedAt: clock.now() };
      await transaction.extension.upsert({
        where,
        create: { assignmentId, studentId, ...data },
        update: data,
      });
    }
    await writeAudit(
      transaction,
      viewer,
      {
        classId,
        action: 'due-extended',
        subject: cellSubject({ studentId, assignmentId }),
        before: { dueAt: before?.dueAt.toISOString() ?? null, note: before?.note ?? '' },
        after: { dueAt },
        reason,
      },
      clock,
    );
    return success(null);
  });
}
