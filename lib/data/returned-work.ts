import 'server-only';
import { z } from 'zod';
import { canTeachClass, type Viewer } from '../auth/policy';
import { writeAudit } from './audit';
import { holdClass } from './class-in-line';
import { cellSubject } from './cell-audit';
import { systemClock, type Clock } from './clock';
import { commentedSelect, commentText, hasNewer, mostCommentCharacters } from './comments';
import { db } from './db';
import { firstField, firstMessage } from './names';
import { changedMeanwhile, isAsOpened, openedOnSchema, type OpenedOn } from './opened-on';
import { putComment } from './put-comment';
import { failure, notFound, success, type Result } from './result';

const inputSchema = z.strictObject({
  attemptId: z.string().max(100),
  text: commentText.min(1, 'Write what to do better: the student reads it.'),
  openedOn: openedOnSchema,
});

/** The attempt as far as whoever teaches its student may give it back; null for everybody else. */
async function attemptFor(viewer: Viewer, attemptId: unknown) {
  if (typeof attemptId !== 'string' || viewer.kind !== 'teacher') return null;
  const attempt = await db().attempt.findUnique({
    where: { id: attemptId },
    select: commentedSelect,
  });
  if (attempt === null || !canTeachClass(viewer, attempt.student.class)) return null;
  const { assignmentId, mode } = attempt;
  return assignmentId === null || mode !== 'check'
    ? null
    : { ...attempt, assignmentId, teacherId: viewer.teacherId };
}

const alreadyAgain = () =>
  failure(
    'newer-attempt',
    'A newer attempt has been started: what was done before stays as it is.',
  );

/** The new words below the comment that stands, which stays; words that it ends with are not said twice. */
function below(stood: string | null, text: string): string {
  if (stood === null || text.startsWith(`${stood}\n`)) return text;
  return stood === text || stood.endsWith(`\n\n${text}`) ? stood : `${stood}\n\n${text}`;
}

/**
 * Gives the last work at a part back for another try: one more attempt is allowed, and the comment on the
 * whole, with what is new below what stood there, is read at once, whenever marks are shown.
 */
export async function giveBack(
  viewer: Viewer,
  input: { attemptId: string; text: string; openedOn?: OpenedOn },
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const attempt = await attemptFor(viewer, input.attemptId);
  if (attempt === null) return notFound();
  const parsed = inputSchema.safeParse(input);
  if (!parsed.success)
    return failure('bad-input', firstMessage(parsed.error), firstField(parsed.error));
  const { attemptId, text, openedOn } = parsed.data;
  const { studentId, assignmentId, teacherId } = attempt;
  const now = clock.now();
  return db().$transaction(async (transaction) => {
    await holdClass(transaction, attempt.student.class.id);
    if (await hasNewer(transaction, attempt)) return alreadyAgain();
    const stood = await transaction.comment.findUnique({
      where: { attemptId_criterion: { attemptId, criterion: '' } },
      select: { text: true, teacherId: true, changedAt: true },
    });
    if (!isAsOpened(openedOn, stood?.changedAt)) return changedMeanwhile();
    const both = below(stood?.text ?? null, text);
    if (both.length > mostCommentCharacters)
      return failure(
        'too-long',
        'Together with the comment on the whole that is more than 2,000 characters. Shorten one of them.',
        'text',
      );
    const { count } = await transaction.attempt.updateMany({
      where: { id: attemptId, status: 'submitted', returnedAt: null },
      data: { returnedAt: now },
    });
    if (count === 0)
      return failure('not-to-give-back', 'This is still open or has been given back already.');
    const comment = { attemptId, criterion: '', text: both, teacherId };
    await putComment(transaction, comment, now);
    await writeAudit(
      transaction,
      viewer,
      {
        classId: attempt.student.class.id,
        action: 'returned',
        subject: cellSubject({ studentId, assignmentId, attemptId }),
        before: { returnedAt: null, text: stood?.text ?? null, by: stood?.teacherId ?? null },
        after: { returnedAt: now.toISOString(), text: both },
      },
      clock,
    );
    return success(null);
  });
}

/** While no newer attempt has been started, giving back can be taken back; the comment stays. */
export async function takeBack(
  viewer: Viewer,
  attemptId: string,
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const attempt = await attemptFor(viewer, attemptId);
  if (attempt === null) return notFound();
  const { studentId, assignmentId, returnedAt } = attempt;
  return db().$transaction(async (transaction) => {
    await holdClass(transaction, attempt.student.class.id);
    if (await hasNewer(transaction, attempt)) return alreadyAgain();
    const { count } = await transaction.attempt.updateMany({
      where: { id: attemptId, NOT: { returnedAt: null } },
      data: { returnedAt: null },
    });
    if (count === 0 || returnedAt === null)
      return failure('not-returned', 'This has not been given back.');
    await writeAudit(
      transaction,
      viewer,
      {
        classId: attempt.student.class.id,
        action: 'return-taken-back',
        subject: cellSubject({ studentId, assignmentId, attemptId }),
        before: { returnedAt: returnedAt.toISOString() },
        after: { returnedAt: null },
      },
      clock,
    );
    return success(null);
  });
}
