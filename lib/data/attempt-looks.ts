import 'server-only';
import { canWorkOnAttempt, type Viewer } from '../auth/policy';
import { loadCatalogue } from '../content/sky-catalogue';
import { faultAskSchema } from '../grading/fault-submission';
import { faultPiece, type FaultSeen } from '../variants/fault-seen';
import { classAccessSelect } from './access';
import { systemClock, type Clock } from './clock';
import { db, type Transaction } from './db';
import { isUniqueViolation } from './is-unique-violation';
import { isSameLook, lookPayload, lookSequence } from './lab-tasks/fault-looks';
import { faultVariantSchema } from './lab-tasks/stored-fault';
import { alreadySubmitted, failure, notFound, success, type Result } from './result';

/** What an attempt's events say was looked at, in order; with the numbers of those events. */
export async function looksSoFar(
  client: Pick<Transaction, 'event'>,
  attemptId: string,
): Promise<{ lookedAt: unknown[]; sequences: number[] }> {
  const events = await client.event.findMany({
    where: { attemptId, kind: 'looked' },
    orderBy: [{ at: 'asc' }, { sequence: 'desc' }],
    select: { sequence: true, payload: true },
  });
  return {
    lookedAt: events.map(({ payload }) => payload),
    sequences: events.map(({ sequence }) => sequence),
  };
}

/**
 * Gives out one piece of the evidence of an open attempt at "What went wrong?" and writes down that it
 * did, so that a mark need not take anybody's word for it. `what`: a `FaultAsk`. The same again gives
 * the same and counts once; a second test slew is refused.
 */
export async function lookAt(
  viewer: Viewer,
  attemptId: string,
  what: unknown,
  clock: Clock = systemClock,
): Promise<Result<FaultSeen>> {
  const attempt = await db().attempt.findUnique({
    where: { id: attemptId },
    select: {
      lab: true,
      variant: true,
      student: { select: { id: true, class: { select: classAccessSelect } } },
    },
  });
  if (attempt?.lab !== 'what-went-wrong' || !canWorkOnAttempt(viewer, attempt)) return notFound();
  const read = faultAskSchema.safeParse(what);
  if (!read.success) return failure('bad-input', 'There is no such piece of evidence.');
  const ask = read.data;
  const variant = faultVariantSchema.parse(attempt.variant);
  if (typeof ask !== 'string' && !variant.testSlews.some(({ hip }) => hip === ask.testSlew))
    return failure('not-offered', 'Send the telescope to one of the stars that are offered.');
  const costsNothing = typeof ask === 'string' && variant.open.includes(ask);
  const sequence = lookSequence(ask);

  const writeDown = () =>
    db().$transaction(async (transaction) => {
      // Written, not only read: handing in and looking wait for each other.
      const { count } = await transaction.attempt.updateMany({
        where: { id: attemptId, status: 'open' },
        data: { status: 'open' },
      });
      if (count === 0) return alreadySubmitted();
      const there = await transaction.event.findUnique({
        where: { attemptId_sequence: { attemptId, sequence } },
        select: { payload: true },
      });
      if (there !== null && !isSameLook(there.payload, ask))
        return failure(
          'changed-meanwhile',
          'The one test slew has been made, in another window. Load the page again to see it.',
        );
      if (there === null && !costsNothing)
        await transaction.event.create({
          data: { attemptId, sequence, kind: 'looked', payload: lookPayload(ask), at: clock.now() },
        });
      return success(null);
    });

  const written = await writeDown().catch((error: unknown) => {
    // Two that asked together: the second finds what the first wrote.
    if (isUniqueViolation(error)) return writeDown();
    throw error;
  });
  return written.ok ? success(faultPiece(variant, ask, loadCatalogue())) : written;
}
