import 'server-only';
import { canWorkOnAttempt, type Viewer } from '../auth/policy';
import { classAccessSelect } from './access';
import { looksSoFar } from './attempt-looks';
import { standingOf, standingSelect } from './attempt-standing';
import { systemClock, type Clock } from './clock';
import { db, type Transaction } from './db';
import { labTaskOf, type LabResult } from './lab-tasks/lab-tasks';
import { alreadySubmitted, failure, notFound, success, type Result } from './result';

/** `result` is null while the feedback is withheld. */
export type SubmittedAttempt = { attemptId: string; result: LabResult | null; late: boolean };

const nextSequence = async (transaction: Transaction, attemptId: string): Promise<number> => {
  const last = await transaction.event.aggregate({
    where: { attemptId },
    _max: { sequence: true },
  });
  return (last._max.sequence ?? 0) + 1;
};

const forgetDrafts = (transaction: Transaction, attemptId: string) =>
  transaction.event.deleteMany({ where: { attemptId, kind: 'draft' } });

/**
 * `input`: { sequence, draft }. Saving the same again is harmless; an older sequence with another
 * draft comes from a second window and is refused, so that it does not undo newer work.
 */
export async function saveDraft(
  viewer: Viewer,
  attemptId: string,
  input: unknown,
  clock: Clock = systemClock,
): Promise<Result<{ sequence: number }>> {
  const attempt = await db().attempt.findUnique({
    where: { id: attemptId },
    select: {
      lab: true,
      student: { select: { id: true, class: { select: classAccessSelect } } },
    },
  });
  if (attempt === null || !canWorkOnAttempt(viewer, attempt)) return notFound();
  const task = labTaskOf(attempt.lab);
  const read = task.readDraft(input);
  if (!read.ok) return read;
  const { sequence, draft } = read.value;
  return db().$transaction(async (transaction) => {
    const now = await transaction.attempt.findUnique({
      where: { id: attemptId },
      select: { status: true },
    });
    if (now?.status !== 'open') return alreadySubmitted();
    if (sequence < (await nextSequence(transaction, attemptId))) {
      const there = await transaction.event.findUnique({
        where: { attemptId_sequence: { attemptId, sequence } },
        select: { kind: true, payload: true },
      });
      if (there?.kind === 'draft' && task.isDraft(there.payload, draft)) {
        return success({ sequence });
      }
      return failure(
        'changed-meanwhile',
        'This attempt was changed in another window. Load the page again to go on from there.',
      );
    }
    if (task.keepsLatestDraftOnly) await forgetDrafts(transaction, attemptId);
    await transaction.event.create({
      data: { attemptId, sequence, kind: 'draft', payload: draft, at: clock.now() },
    });
    return success({ sequence });
  });
}

const submitSelect = {
  id: true,
  status: true,
  lab: true,
  variant: true,
  answerKey: true,
  graderVersion: true,
  submissionKey: true,
  marks: { orderBy: { graderVersion: 'desc' }, take: 1, select: { result: true } },
  ...standingSelect,
} as const;

const loadForSubmit = (attemptId: string) =>
  db().attempt.findUnique({ where: { id: attemptId }, select: submitSelect });
type AttemptRow = NonNullable<Awaited<ReturnType<typeof loadForSubmit>>>;

/**
 * `input`: { submission, idempotencyKey }, nothing else. The mark is computed here from what the
 * attempt froze. The same key again gives the first answer; another key on a submitted attempt is
 * refused. An answer that cannot be marked uses nothing up and leaves the attempt open.
 */
export async function submitAttempt(
  viewer: Viewer,
  attemptId: string,
  input: unknown,
  clock: Clock = systemClock,
): Promise<Result<SubmittedAttempt>> {
  const attempt = await loadForSubmit(attemptId);
  if (attempt === null || !canWorkOnAttempt(viewer, attempt)) return notFound();
  const task = labTaskOf(attempt.lab);
  const read = task.readSubmission(input);
  if (!read.ok) return read;
  const { idempotencyKey, mark } = read.value;
  const now = clock.now();
  if (attempt.status === 'submitted') return firstAnswer(attempt, idempotencyKey, now);

  const { lookedAt, sequences } = await looksSoFar(db(), attemptId);
  const graded = mark(attempt, lookedAt);
  if (!graded.ok) return graded;
  const { submission, result } = graded.value;
  const counted = await db().$transaction(async (transaction) => {
    // Of two that arrive together, one finds the attempt no longer open and changes nothing.
    const { count } = await transaction.attempt.updateMany({
      where: {
        id: attemptId,
        status: 'open',
        // Nor is anything given out that the mark would not know of.
        events: { none: { kind: 'looked', sequence: { notIn: sequences } } },
      },
      data: { status: 'submitted', submittedAt: now, submission, submissionKey: idempotencyKey },
    });
    if (count === 0) return false;
    const { graderVersion, total } = result;
    const gateFailed = 'gates' in result && result.gates.length > 0;
    await transaction.mark.create({
      data: { attemptId, graderVersion, total, gateFailed, result, gradedAt: now },
    });
    const sequence = await nextSequence(transaction, attemptId);
    // A long piece of work is kept once, with the attempt: a regrade replays it from there.
    if (task.keepsLatestDraftOnly) await forgetDrafts(transaction, attemptId);
    const payload = task.keepsLatestDraftOnly ? {} : submission;
    await transaction.event.create({
      data: { attemptId, sequence, kind: 'submitted', payload, at: now },
    });
    return true;
  });
  if (!counted) {
    const first = await loadForSubmit(attemptId);
    if (first?.status === 'open') return submitAttempt(viewer, attemptId, input, clock);
    return first === null ? notFound() : firstAnswer(first, idempotencyKey, now);
  }
  const { late, feedbackVisible } = standingOf({ ...attempt, submittedAt: now }, now);
  return success({ attemptId, result: feedbackVisible ? result : null, late });
}

function firstAnswer(
  attempt: AttemptRow,
  idempotencyKey: string,
  now: Date,
): Result<SubmittedAttempt> {
  if (attempt.submissionKey !== idempotencyKey) return alreadySubmitted();
  const { late, feedbackVisible } = standingOf(attempt, now);
  const [mark] = attempt.marks;
  const result = mark === undefined ? null : labTaskOf(attempt.lab).readResult(mark.result);
  return success({ attemptId: attempt.id, result: feedbackVisible ? result : null, late });
}
