'use server';

import { getViewer } from '@/lib/auth/session';
import { saveDraft, submitAttempt } from '@/lib/data/attempts';
import type { LabResult } from '@/lib/data/lab-tasks/lab-tasks';
import type { Result } from '@/lib/data/result';

/** Keeps work in progress. `input` is parsed in lib/data, where ownership is decided too. */
export async function saveAttemptDraft(
  attemptId: string,
  input: unknown,
): Promise<Result<{ sequence: number }>> {
  return saveDraft(await getViewer(), attemptId, input);
}

type Sent<R> = Promise<Result<{ result: R | null; late: boolean }>>;

/** Submits once, however often the same submission arrives. The attempt itself knows its lab. */
async function send<R extends LabResult>(
  attemptId: string,
  input: unknown,
  isOfLab: (result: LabResult) => result is R,
): Sent<R> {
  const sent = await submitAttempt(await getViewer(), attemptId, input);
  if (!sent.ok) return sent;
  const { result, late } = sent.value;
  if (result !== null && !isOfLab(result)) {
    throw new Error('an attempt was answered through another lab’s action');
  }
  return { ok: true, value: { result, late } };
}

export async function sendPairAttempt(attemptId: string, input: unknown) {
  return send(attemptId, input, (result) => result.lab === 'pick-the-pair');
}

export async function sendRunAttempt(attemptId: string, input: unknown) {
  return send(attemptId, input, (result) => result.lab === 'alignment-run');
}

export async function sendFaultAttempt(attemptId: string, input: unknown) {
  return send(attemptId, input, (result) => result.lab === 'what-went-wrong');
}
