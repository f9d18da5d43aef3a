import 'server-only';
import { z } from 'zod';
import { visitorMayMakeRound } from '@/lib/auth/session';
import { gradeVisitorRound } from '@/lib/data/practice-round';
import { failure, success, type Result } from '@/lib/data/result';

/** A round's address as a page sends it back. */
export const roundSchema = z.strictObject({
  seed: z.string().min(1).max(100),
  kitId: z.string().max(60),
  siteId: z.string().max(60),
  placeId: z.number().int().min(0),
  localTime: z.string().max(40),
});
const sentSchema = z.object({ submission: z.unknown() });

/** Said where a network has had more rounds than a class could use. */
export const tooManyRounds =
  'Very many rounds have been asked for from your network. Wait ten minutes and try again; nothing you did is lost.';

/** Makes the round again from its address and marks the answer by the lab's rules. Nothing is kept. */
export async function gradeRoundOf<R>(
  task: Parameters<typeof gradeVisitorRound<R>>[0],
  round: unknown,
  sent: unknown,
): Promise<Result<{ result: R | null; late: boolean }>> {
  const parsed = roundSchema.safeParse(round);
  const submission = sentSchema.safeParse(sent);
  if (!parsed.success || !submission.success) {
    return failure('bad-input', 'This answer cannot be read. Reload the page and try again.');
  }
  if (!(await visitorMayMakeRound())) return failure('too-many-rounds', tooManyRounds);
  const graded = await gradeVisitorRound<R>(task, parsed.data, submission.data.submission);
  return graded.ok ? success({ result: graded.value, late: false }) : graded;
}
