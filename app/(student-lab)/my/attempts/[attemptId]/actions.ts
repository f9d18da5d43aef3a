'use server';

import type { FaultDebrief } from '@/components/lab/fault/fault-lab-props';
import { wholeFaultView } from '@/components/lab/fault/fault-view';
import { getViewer } from '@/lib/auth/session';
import { loadCatalogue } from '@/lib/content/sky-catalogue';
import { getAttemptResult, lookAt, saveDraft, submitAttempt } from '@/lib/data/attempts';
import { parsedId } from '@/lib/data/ids';
import type { LabResult } from '@/lib/data/lab-tasks/lab-tasks';
import type { Result } from '@/lib/data/result';
import type { AnyBenchResult } from '@/lib/grading/bench/any-bench-result';
import { isBenchLab } from '@/lib/variants/bench/bench-labs';
import type { FaultSeen } from '@/lib/variants/fault-seen';

/** Keeps work in progress. `input` is parsed in lib/data, where ownership is decided too. */
export async function saveAttemptDraft(
  sentId: unknown,
  input: unknown,
): Promise<Result<{ sequence: number }>> {
  return saveDraft(await getViewer(), parsedId(sentId), input);
}

type Sent<R> = Promise<Result<{ result: R | null; late: boolean }>>;

/** Submits once, however often the same submission arrives. The attempt itself knows its lab. */
async function send<R extends LabResult>(
  sentId: unknown,
  input: unknown,
  isOfLab: (result: LabResult) => result is R,
): Sent<R> {
  const sent = await submitAttempt(await getViewer(), parsedId(sentId), input);
  if (!sent.ok) return sent;
  const { result, late } = sent.value;
  if (result !== null && !isOfLab(result)) {
    throw new Error('an attempt was answered through another lab’s action');
  }
  return { ok: true, value: { result, late } };
}

export async function sendPairAttempt(sentId: unknown, input: unknown) {
  return send(sentId, input, (result) => result.lab === 'pick-the-pair');
}

export async function sendRunAttempt(sentId: unknown, input: unknown) {
  return send(sentId, input, (result) => result.lab === 'alignment-run');
}

export async function sendQuestionsAttempt(sentId: unknown, input: unknown) {
  return send(sentId, input, (result) => result.lab === 'lesson-questions');
}

export async function sendBenchAttempt(sentId: unknown, input: unknown) {
  return send(sentId, input, isOfBench);
}

const isOfBench = (result: LabResult): result is AnyBenchResult => isBenchLab(result.lab);

/** With all the evidence, where the result may be seen: the page has only what was looked at. */
export async function sendFaultAttempt(sentId: unknown, input: unknown): Sent<FaultDebrief> {
  const sent = await send(sentId, input, (result) => result.lab === 'what-went-wrong');
  if (!sent.ok) return sent;
  const { result, late } = sent.value;
  const attempt =
    result === null ? null : await getAttemptResult(await getViewer(), parsedId(sentId));
  if (result === null || attempt?.lab !== 'what-went-wrong')
    return { ok: true, value: { result: null, late } };
  const { placeName } = attempt;
  const variant = wholeFaultView(attempt.variant, { placeName, catalogue: loadCatalogue() });
  return { ok: true, value: { result: { result, variant }, late } };
}

/** Gives out one piece of evidence, once however often it is asked for. */
export async function lookInFaultAttempt(
  sentId: unknown,
  what: unknown,
): Promise<Result<FaultSeen>> {
  return lookAt(await getViewer(), parsedId(sentId), what);
}
