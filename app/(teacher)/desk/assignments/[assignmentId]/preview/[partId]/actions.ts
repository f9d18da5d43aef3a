'use server';

import { z } from 'zod';
import type { FaultDebrief } from '@/components/lab/fault/fault-lab-props';
import { wholeFaultView } from '@/components/lab/fault/fault-view';
import { getViewer } from '@/lib/auth/session';
import { loadCatalogue } from '@/lib/content/sky-catalogue';
import { lookInPreview, markPreview, previewEvening } from '@/lib/data/assignment-preview';
import type { LabResult } from '@/lib/data/lab-tasks/lab-tasks';
import { notFound, success, type Result } from '@/lib/data/result';
import type { AnyBenchResult } from '@/lib/grading/bench/any-bench-result';
import { isBenchLab } from '@/lib/variants/bench/bench-labs';
import type { FaultSeen } from '@/lib/variants/fault-seen';

const addressSchema = z.strictObject({
  assignmentId: z.string().max(60),
  partId: z.string().max(60),
  round: z.string().min(1).max(40),
});

type Sent<R> = Promise<Result<{ result: R | null; late: boolean }>>;

/** Marks what was tried; nothing is kept. */
async function send<R extends LabResult>(
  address: unknown,
  input: unknown,
  isOfLab: (result: LabResult) => result is R,
): Sent<R> {
  const parsed = addressSchema.safeParse(address);
  if (!parsed.success) return notFound();
  const marked = await markPreview(await getViewer(), parsed.data, input);
  if (!marked.ok) return marked;
  const result = marked.value;
  return isOfLab(result) ? success({ result, late: false }) : notFound();
}

export async function tryPair(address: unknown, input: unknown) {
  return send(address, input, (result) => result.lab === 'pick-the-pair');
}

export async function tryRun(address: unknown, input: unknown) {
  return send(address, input, (result) => result.lab === 'alignment-run');
}

export async function tryQuestions(address: unknown, input: unknown) {
  return send(address, input, (result) => result.lab === 'lesson-questions');
}

/** The questions' lab saves as one goes; here there is nothing to save it in, and it need not know. */
export async function keepNothing(input: unknown): Promise<Result<{ sequence: number }>> {
  const parsed = z.object({ sequence: z.number().int() }).safeParse(input);
  return Promise.resolve(parsed.success ? success({ sequence: parsed.data.sequence }) : notFound());
}

export async function tryBench(address: unknown, input: unknown) {
  return send(address, input, isOfBench);
}

const isOfBench = (result: LabResult): result is AnyBenchResult => isBenchLab(result.lab);

/** With all the evidence, as a student is shown it afterwards. */
export async function tryFault(address: unknown, input: unknown): Sent<FaultDebrief> {
  const sent = await send(address, input, (result) => result.lab === 'what-went-wrong');
  const parsed = addressSchema.safeParse(address);
  if (!sent.ok) return sent;
  const { result, late } = sent.value;
  const evening = parsed.success ? await previewEvening(await getViewer(), parsed.data) : null;
  if (result === null || evening === null) return notFound();
  const { placeName } = evening;
  const variant = wholeFaultView(evening.variant, { placeName, catalogue: loadCatalogue() });
  return success({ result: { result, variant }, late });
}

export async function lookInTriedFault(
  address: unknown,
  what: unknown,
): Promise<Result<FaultSeen>> {
  const parsed = addressSchema.safeParse(address);
  return parsed.success ? lookInPreview(await getViewer(), parsed.data, what) : notFound();
}
