import 'server-only';
import { visitorMayMakeRound } from '@/lib/auth/session';
import { labTasks } from '@/lib/data/lab-tasks/lab-tasks';
import { makeVisitorRound, type VisitorRound } from '@/lib/data/practice-round';
import { failure, success, type Result } from '@/lib/data/result';
import type { FaultVariant } from '@/lib/variants/fault-variant';
import { roundSchema, tooManyRounds } from '../grade-round';

type Evening = VisitorRound<FaultVariant>;

/** A visitor looks several times at one evening: it need not be run anew, nor counted, each time. */
const mostAtHand = 60;
const atHand = new Map<string, Evening>();

/** The visitor's evening made again from its address, for what its page does not hold. */
export async function eveningAgain(round: unknown): Promise<Result<Evening>> {
  const parsed = roundSchema.safeParse(round);
  if (!parsed.success)
    return failure('bad-input', 'The address of this round cannot be read. Reload the page.');
  const key = JSON.stringify(Object.entries(parsed.data).sort());
  const known = atHand.get(key);
  if (known !== undefined) return success(known);
  if (!(await visitorMayMakeRound())) return failure('too-many-rounds', tooManyRounds);
  const made = await makeVisitorRound(labTasks['what-went-wrong'], parsed.data);
  if (!made.ok) return made;
  const [oldest] = atHand.keys();
  if (oldest !== undefined && atHand.size >= mostAtHand) atHand.delete(oldest);
  atHand.set(key, made.value);
  return made;
}
