import 'server-only';
import { z } from 'zod';
import {
  canReadNotes,
  canSeeAttempt,
  canSeeResult,
  canTeachClass,
  canWorkOnAttempt,
  type Viewer,
} from '../auth/policy';
import { criteriaOf } from '../grading/criteria-of';
import { standingOf, standingSelect } from './attempt-standing';
import { writeAudit } from './audit';
import { holdClass } from './class-in-line';
import { cellSubject } from './cell-audit';
import { systemClock, type Clock } from './clock';
import { db, type Transaction } from './db';
import { labTaskOf } from './lab-tasks/lab-tasks';
import { firstField, firstMessage } from './names';
import { changedMeanwhile, openedOnSchema, type OpenedOn } from './opened-on';
import { putComment } from './put-comment';
import { failure, notFound, success, type Result } from './result';

export type AttemptComment = {
  /** The criterion's name in the result; empty: the attempt as a whole. */
  criterion: string;
  text: string;
  /** Null: of a teacher whose account is gone. */
  by: string | null;
  /** UTC, ISO 8601. */
  changedAt: string;
};
export type AttemptComments = {
  comments: AttemptComment[];
  /** Given back for another try; UTC, ISO 8601. */
  returnedAt: string | null;
  /** A newer attempt at the same part has been started. */
  newerStarted: boolean;
};

/** Shared with returning work: what both must know of an attempt. */
export const commentedSelect = {
  id: true,
  studentId: true,
  assignmentId: true,
  partId: true,
  number: true,
  status: true,
  returnedAt: true,
  lab: true,
  marks: { orderBy: { graderVersion: 'desc' }, take: 1, select: { result: true } },
  ...standingSelect,
} as const;

/** Whether a later check attempt at the same part is there, open or handed in. */
export const hasNewer = async (
  client: Transaction,
  attempt: { studentId: string; partId: string | null; number: number },
): Promise<boolean> =>
  (await client.attempt.count({
    where: {
      studentId: attempt.studentId,
      partId: attempt.partId,
      mode: 'check',
      number: { gt: attempt.number },
    },
  })) > 0;

/**
 * What teachers wrote beside an attempt. The student reads it with the result; of work that was given
 * back the comment on the whole at once, since it says what to do. A substitute sees that it was given back.
 */
export async function getAttemptComments(
  viewer: Viewer,
  attemptId: string,
  clock: Clock = systemClock,
): Promise<AttemptComments | null> {
  const attempt = await db().attempt.findUnique({
    where: { id: attemptId },
    select: {
      ...commentedSelect,
      comments: {
        orderBy: { criterion: 'asc' },
        select: {
          criterion: true,
          text: true,
          changedAt: true,
          teacher: { select: { displayName: true } },
        },
      },
    },
  });
  if (attempt === null || !canSeeAttempt(viewer, attempt)) return null;
  const reads = canWorkOnAttempt(viewer, attempt) || canReadNotes(viewer, attempt.student.class);
  const { feedbackVisible } = standingOf(attempt, clock.now());
  const all = canSeeResult(viewer, { ...attempt, feedbackVisible });
  const returned = attempt.returnedAt !== null;
  return {
    comments: attempt.comments
      .filter(({ criterion }) => reads && (all || (returned && criterion === '')))
      .map(({ criterion, text, changedAt, teacher }) => ({
        criterion,
        text,
        by: teacher?.displayName ?? null,
        changedAt: changedAt.toISOString(),
      })),
    returnedAt: attempt.returnedAt?.toISOString() ?? null,
    newerStarted: await hasNewer(db(), attempt),
  };
}

export const mostCommentCharacters = 2000;
export const commentText = z
  .string()
  .trim()
  .max(mostCommentCharacters, 'Keep a comment below 2,000 characters.');
const inputSchema = z.strictObject({
  attemptId: z.string().max(100),
  criterion: z.string().max(60),
  text: commentText,
  openedOn: openedOnSchema,
});

/**
 * Writes, changes or (empty) takes away a comment on a submitted check attempt; a colleague's newer one is
 * not replaced unseen.
 */
export async function writeComment(
  viewer: Viewer,
  input: { attemptId: string; criterion: string; text: string; openedOn?: OpenedOn },
  clock: Clock = systemClock,
): Promise<Result<null>> {
  const attempt = await db().attempt.findUnique({
    where: { id: typeof input.attemptId === 'string' ? input.attemptId : '' },
    select: commentedSelect,
  });
  if (
    attempt === null ||
    viewer.kind !== 'teacher' ||
    !canTeachClass(viewer, attempt.student.class)
  )
    return notFound();
  const parsed = inputSchema.safeParse(input);
  if (!parsed.success)
    return failure('bad-input', firstMessage(parsed.error), firstField(parsed.error));
  const { attemptId, criterion, text, openedOn } = parsed.data;
  const { studentId, assignmentId } = attempt;
  if (attempt.mode !== 'check' || assignmentId === null || attempt.status !== 'submitted')
    return failure('not-handed-in', 'Comments go with work that has been handed in.');
  if (criterion !== '' && !criteriaIn(attempt).includes(criterion))
    return failure('no-such-criterion', 'This mark has no such part.', 'criterion');
  return db().$transaction(async (transaction) => {
    await holdClass(transaction, attempt.student.class.id);
    const stood = await putComment(
      transaction,
      { attemptId, criterion, text, teacherId: viewer.teacherId, openedOn },
      clock.now(),
    );
    if (stood === null) return changedMeanwhile();
    const { text: before, by } = stood;
    const after = text === '' ? null : text;
    if (before === after) return success(null);
    await writeAudit(
      transaction,
      viewer,
      {
        classId: attempt.student.class.id,
        action: 'commented',
        subject: cellSubject({ studentId, assignmentId, attemptId }),
        before: { criterion, text: before, by },
        after: { criterion, text: after },
      },
      clock,
    );
    return success(null);
  });
}

function criteriaIn({ lab, marks }: { lab: string; marks: { result: unknown }[] }): string[] {
  const [mark] = marks;
  if (mark === undefined) return [];
  return criteriaOf(labTaskOf(lab).readResult(mark.result)).map(({ id }) => id);
}
