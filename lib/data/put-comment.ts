import 'server-only';
import type { Transaction } from './db';
import { isAsOpened, type OpenedOn } from './opened-on';

type CommentBefore = { text: string | null; by: string | null };

/**
 * Puts a comment where another may stand; an empty one takes it away, and the same words leave it to
 * whoever wrote them. Answers what stood there; null, and nothing done, where that is no longer what the
 * form was opened on.
 */
export async function putComment(
  transaction: Transaction,
  comment: {
    attemptId: string;
    criterion: string;
    text: string;
    teacherId: string | null;
    openedOn?: OpenedOn;
  },
  now: Date,
): Promise<CommentBefore | null> {
  const { attemptId, criterion, text, teacherId, openedOn } = comment;
  const where = { attemptId_criterion: { attemptId, criterion } };
  const found = await transaction.comment.findUnique({
    where,
    select: { text: true, teacherId: true, changedAt: true },
  });
  if (!isAsOpened(openedOn, found?.changedAt)) return null;
  const before = { text: found?.text ?? null, by: found?.teacherId ?? null };
  if (before.text === (text === '' ? null : text)) return before;
  if (text === '') await transaction.comment.deleteMany({ where: { attemptId, criterion } });
  else {
    const data = { text, teacherId, changedAt: now };
    await transaction.comment.upsert({
      where,
      create: { attemptId, criterion, ...data },
      update: data,
    });
  }
  return before;
}
