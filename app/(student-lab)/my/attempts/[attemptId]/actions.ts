'use server';

import { getViewer } from '@/lib/auth/session';
import { saveDraft, submitAttempt } from '@/lib/data/attempts';
import type { Result } from '@/lib/data/result';
import type { PairResult } from '@/lib/grading/pair-result';

/** Keeps work in progress. `input` is parsed in lib/data, where ownership is decided too. */
export async function saveAttemptDraft(
  attemptId: string,
  input: unknown,
): Promise<Result<{ sequence: number }>> {
  return saveDraft(await getViewer(), attemptId, input);
}

/** Submits once, however often the same submission arrives. */
export async function sendAttempt(
  attemptId: string,
  input: unknown,
): Promise<Result<{ result: PairResult | null; late: boolean }>> {
  const sent = await submitAttempt(await getViewer(), attemptId, input);
  if (!sent.ok) return sent;
  const { result, late } = sent.value;
  return { ok: true, value: { result, late } };
}
