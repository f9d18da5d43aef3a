'use server';

import type { FaultDebrief } from '@/components/lab/fault/fault-lab-props';
import { wholeFaultView } from '@/components/lab/fault/fault-view';
import { loadCatalogue } from '@/lib/content/sky-catalogue';
import { labTasks } from '@/lib/data/lab-tasks/lab-tasks';
import { failure, success, type Result } from '@/lib/data/result';
import { faultAskSchema } from '@/lib/grading/fault-submission';
import { faultPiece, type FaultSeen } from '@/lib/variants/fault-seen';
import { gradeRoundOf } from '../grade-round';
import { eveningAgain } from './evening-again';

/** Marks a visitor's answer and shows all the evidence. Nothing is kept. */
export async function gradeRound(
  round: unknown,
  sent: unknown,
): Promise<Result<{ result: FaultDebrief | null; late: boolean }>> {
  const graded = await gradeRoundOf(labTasks['what-went-wrong'], round, sent);
  if (!graded.ok) return graded;
  const { result, late } = graded.value;
  const made = await eveningAgain(round);
  if (!made.ok) return made;
  const { variant: evening, placeName } = made.value;
  const variant = wholeFaultView(evening, { placeName, catalogue: loadCatalogue() });
  return success({ result: result === null ? null : { result, variant }, late });
}

/** Shows a visitor one piece of evidence. Nothing counts here, so nothing is written down. */
export async function lookInRound(round: unknown, what: unknown): Promise<Result<FaultSeen>> {
  const ask = faultAskSchema.safeParse(what);
  if (!ask.success) return failure('bad-input', 'There is no such piece of evidence.');
  const made = await eveningAgain(round);
  return made.ok ? success(faultPiece(made.value.variant, ask.data, loadCatalogue())) : made;
}
