import 'server-only';
import { z } from 'zod';
import { canWorkOnAttempt, type Viewer } from '../auth/policy';
import { loadCatalogue } from '../content/sky-catalogue';
import { pairGrader } from '../grading/graders';
import type { PairResult } from '../grading/pair-result';
import {
  pairDraftSchema,
  pairSubmissionSchema,
  type PairRefusal,
  type PairSubmission,
} from '../grading/pair-submission';
import { classAccessSelect } from './access';
import { standingOf, standingSelect } from './attempt-standing';
import { systemClock, type Clock } from './clock';
import { db, type Transaction } from './db';
import { firstField } from './names';
import { failure, notFound, success, type Problem, type Result } from './result';
import { storedAnswerKeySchema, storedResultSchema, storedVariantSchema } from './stored-attempt';

/** `result` is null while the feedback is withheld. */
export type SubmittedAttempt = { attemptId: string; result: PairResult | null; late: boolean };

const draftInputSchema = z.strictObject({
  sequence: z.number().int().min(1).max(20_000),
  draft: pairDraftSchema,
});
const submitInputSchema = z.strictObject({
  submission: pairSubmissionSchema,
  idempotencyKey: z.string().min(8).max(100),
});

/** Says which field was not expected or does not fit; a score from outside is refused here. */
function unreadable(error: z.ZodError): { ok: false; problem: Problem } {
  const stranger = error.issues.find((issue) => issue.code === 'unrecognized_keys');
  if (stranger !== undefined) {
    const field = [...stranger.path, ...stranger.keys.slice(0, 1)].join('.');
    return failure(
      'unexpected-field',
      `"${field}" is not part of an answer. Nothing was counted; your attempt is still open.`,
      field,
    );
  }
  return failure(
    'bad-input',
    'This answer cannot be read. Nothing was counted; your attempt is still open.',
    firstField(error),
  );
}

const alreadySubmitted = () =>
  failure('already-submitted', 'This attempt was submitted before. The first answer counts.');

const nextSequence = async (transaction: Transaction, attemptId: string): Promise<number> => {
  const last = await transaction.event.aggregate({
    where: { attemptId },
    _max: { sequence: true },
  });
  return (last._max.sequence ?? 0) + 1;
};

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
    select: { student: { select: { id: true, class: { select: classAccessSelect } } } },
  });
  if (attempt === null || !canWorkOnAttempt(viewer, attempt)) return notFound();
  const parsed = draftInputSchema.safeParse(input);
  if (!parsed.success) return unreadable(parsed.error);
  const { sequence, draft } = parsed.data;
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
      const kept = there?.kind === 'draft' ? pairDraftSchema.parse(there.payload) : null;
      if (JSON.stringify(kept) === JSON.stringify(draft)) return success({ sequence });
      return failure(
        'changed-meanwhile',
        'This attempt was changed in another window. Load the page again to go on from there.',
      );
    }
    await transaction.event.create({
      data: { attemptId, sequence, kind: 'draft', payload: draft, at: clock.now() },
    });
    return success({ sequence });
  });
}

const submitSelect = {
  id: true,
  status: true,
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
  const parsed = submitInputSchema.safeParse(input);
  if (!parsed.success) return unreadable(parsed.error);
  const { submission, idempotencyKey } = parsed.data;
  const now = clock.now();
  if (attempt.status === 'submitted') return firstAnswer(attempt, idempotencyKey, now);

  const graded = grade(attempt, submission);
  if (!graded.ok) return graded;
  const result = graded.value;
  const counted = await db().$transaction(async (transaction) => {
    // Of two that arrive together, one finds the attempt no longer open and changes nothing.
    const { count } = await transaction.attempt.updateMany({
      where: { id: attemptId, status: 'open' },
      data: { status: 'submitted', submittedAt: now, submission, submissionKey: idempotencyKey },
    });
    if (count === 0) return false;
    const { graderVersion, total } = result;
    await transaction.mark.create({
      data: { attemptId, graderVersion, total, result, gradedAt: now },
    });
    const sequence = await nextSequence(transaction, attemptId);
    await transaction.event.create({
      data: { attemptId, sequence, kind: 'submitted', payload: submission, at: now },
    });
    return true;
  });
  if (!counted) {
    const first = await loadForSubmit(attemptId);
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
  const result = mark === undefined ? null : storedResultSchema.parse(mark.result);
  return success({ attemptId: attempt.id, result: feedbackVisible ? result : null, late });
}

function grade(attempt: AttemptRow, submission: PairSubmission): Result<PairResult> {
  const grader = pairGrader(attempt.graderVersion);
  if (grader === undefined)
    throw new Error(`there is no grader of version ${attempt.graderVersion}`);
  const grading = grader({
    variant: storedVariantSchema.parse(attempt.variant),
    answerKey: storedAnswerKeySchema.parse(attempt.answerKey),
    submission,
    catalogue: loadCatalogue(),
  });
  return grading.ok
    ? success(grading.result)
    : failure(grading.refusal.code, refusalMessage(grading.refusal));
}

/** Why an answer cannot be marked, and what to do. */
export function refusalMessage(refusal: PairRefusal): string {
  const still = 'Nothing was counted; your attempt is still open.';
  switch (refusal.code) {
    case 'same-star-twice':
      return `An alignment needs two different stars: choose another one. ${still}`;
    case 'not-in-this-sky':
      return `One of the stars is not in this sky: choose it again. ${still}`;
    case 'given-star-missing':
      return `One of the two must be the star that was given. ${still}`;
    case 'not-proposed':
      return `Choose among the stars that the mount proposes. ${still}`;
  }
}
