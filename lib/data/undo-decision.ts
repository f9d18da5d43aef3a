import type { CellAction, CellValues } from './cell-audit';
import { hasNewer } from './comments';
import type { Transaction } from './db';
import { putComment } from './put-comment';

type Decision = {
  action: CellAction;
  studentId: string;
  assignmentId: string;
  attemptId: string | null;
  before: CellValues;
  after: CellValues;
};
type Restored = 'done' | 'changed' | 'newer-attempt';

/** Puts back what stood before a decision; 'changed' where what it had set no longer stands. */
export async function restore(
  transaction: Transaction,
  decision: Decision,
  now: Date,
): Promise<Restored> {
  switch (decision.action) {
    case 'mark-overridden':
    case 'excused':
      return restoreOverride(transaction, decision, now);
    case 'due-extended':
      return restoreDue(transaction, decision, now);
    case 'regraded':
      return restoreMark(transaction, decision, now);
    case 'returned':
    case 'return-taken-back':
      return restoreReturn(transaction, decision, now);
    case 'commented':
      return restoreComment(transaction, decision, now);
    case 'undone':
      return 'changed';
  }
}

/** Mark and excuse share a row: each undoing leaves the other half as it is. */
async function restoreOverride(
  transaction: Transaction,
  { action, studentId, assignmentId, before, after }: Decision,
  now: Date,
): Promise<Restored> {
  const where = { studentId_assignmentId: { studentId, assignmentId } };
  const row = await transaction.override.findUnique({ where });
  if (row === null) return 'changed';
  const ofMark = action === 'mark-overridden';
  if (ofMark ? row.mark !== (after.mark ?? null) : row.excused !== after.excused) return 'changed';
  const mark = ofMark ? (before.mark ?? null) : row.mark;
  const excused = ofMark ? row.excused : (before.excused ?? false);
  if (mark === null && !excused) await transaction.override.delete({ where });
  else {
    const note = before.note ?? '';
    await transaction.override.update({ where, data: { mark, excused, note, changedAt: now } });
  }
  return 'done';
}

async function restoreDue(
  transaction: Transaction,
  { studentId, assignmentId, before, after }: Decision,
  now: Date,
): Promise<Restored> {
  const where = { assignmentId_studentId: { assignmentId, studentId } };
  const row = await transaction.extension.findUnique({ where, select: { dueAt: true } });
  if ((row?.dueAt.toISOString() ?? null) !== instantOf(after.dueAt)) return 'changed';
  const dueAt = instantOf(before.dueAt);
  if (dueAt === null)
    await transaction.extension.deleteMany({ where: { assignmentId, studentId } });
  else {
    const data = { dueAt: new Date(dueAt), note: before.note ?? '', changedAt: now };
    await transaction.extension.upsert({
      where,
      create: { assignmentId, studentId, ...data },
      update: data,
    });
  }
  return 'done';
}

/** As the database writes it: what was sent may have left out the milliseconds. */
const instantOf = (instant: string | null | undefined): string | null =>
  instant === null || instant === undefined ? null : new Date(instant).toISOString();

/** A row of a newer grader goes, and the one before counts again; a replaced row comes back whole. */
async function restoreMark(
  transaction: Transaction,
  { attemptId, before, after }: Decision,
  now: Date,
): Promise<Restored> {
  const { graderVersion } = after;
  if (attemptId === null || graderVersion === undefined) return 'changed';
  const newest = await transaction.mark.findFirst({
    where: { attemptId },
    orderBy: { graderVersion: 'desc' },
    select: { graderVersion: true, total: true },
  });
  if (newest?.graderVersion !== graderVersion || newest.total !== after.total) return 'changed';
  const where = { attemptId_graderVersion: { attemptId, graderVersion } };
  const { total, gateFailed, result } = before;
  if (before.graderVersion !== graderVersion) await transaction.mark.delete({ where });
  else if (total === undefined || gateFailed === undefined || (result ?? null) === null)
    return 'changed';
  else
    await transaction.mark.update({
      where,
      data: { total, gateFailed, result: result ?? {}, gradedAt: now },
    });
  return 'done';
}

async function restoreReturn(
  transaction: Transaction,
  decision: Decision,
  now: Date,
): Promise<Restored> {
  const { action, attemptId, before, after } = decision;
  if (attemptId === null) return 'changed';
  const attempt = await transaction.attempt.findUnique({
    where: { id: attemptId },
    select: { studentId: true, partId: true, number: true, returnedAt: true },
  });
  if (attempt === null) return 'changed';
  if ((attempt.returnedAt?.toISOString() ?? null) !== (after.returnedAt ?? null)) return 'changed';
  if (await hasNewer(transaction, attempt)) return 'newer-attempt';
  const returnedAt = instantOf(before.returnedAt);
  await transaction.attempt.update({
    where: { id: attemptId },
    data: { returnedAt: returnedAt === null ? null : new Date(returnedAt) },
  });
  if (action === 'returned') {
    const teacherId = await authorBefore(transaction, decision);
    const comment = { attemptId, criterion: '', text: before.text ?? '', teacherId };
    await putComment(transaction, comment, now);
  }
  return 'done';
}

async function restoreComment(
  transaction: Transaction,
  decision: Decision,
  now: Date,
): Promise<Restored> {
  const { attemptId, before, after } = decision;
  const { criterion } = after;
  if (attemptId === null || criterion === undefined) return 'changed';
  const there = await transaction.comment.findUnique({
    where: { attemptId_criterion: { attemptId, criterion } },
    select: { text: true },
  });
  if ((there?.text ?? null) !== (after.text ?? null)) return 'changed';
  const teacherId = await authorBefore(transaction, decision);
  await putComment(transaction, { attemptId, criterion, text: before.text ?? '', teacherId }, now);
  return 'done';
}

/** Who had written the comment; null when that account is gone, and where an older line does not say. */
async function authorBefore(
  transaction: Transaction,
  { before: { by } }: Decision,
): Promise<string | null> {
  if (by === undefined || by === null) return null;
  const author = await transaction.teacher.findUnique({ where: { id: by }, select: { id: true } });
  return author?.id ?? null;
}
