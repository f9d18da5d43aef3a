import type { PairDraft } from '@/lib/grading/pair-submission';
import { pairDraftSchema } from '@/lib/grading/pair-submission';

/** A draft that has not reached the server yet, kept for this tab. */
export type KeptDraft = { sequence: number; draft: PairDraft };

const keyOf = (attemptKey: string): string => `duskbench-draft-${attemptKey}`;

function storage(): Storage | null {
  try {
    return window.sessionStorage;
  } catch {
    // A browser may refuse storage altogether: the draft then lives in memory alone.
    return null;
  }
}

export function keepDraft(attemptKey: string, kept: KeptDraft): void {
  try {
    storage()?.setItem(keyOf(attemptKey), JSON.stringify(kept));
  } catch {
    // Full or forbidden: see above.
  }
}

export function forgetDraft(attemptKey: string): void {
  storage()?.removeItem(keyOf(attemptKey));
}

/** What an earlier, cut-off visit left behind; null where there is nothing or nothing sound. */
export function keptDraft(attemptKey: string): KeptDraft | null {
  const text = storage()?.getItem(keyOf(attemptKey)) ?? null;
  if (text === null) return null;
  try {
    const json: unknown = JSON.parse(text);
    if (typeof json !== 'object' || json === null || !('sequence' in json) || !('draft' in json))
      return null;
    const draft = pairDraftSchema.safeParse(json.draft);
    return typeof json.sequence === 'number' && draft.success
      ? { sequence: json.sequence, draft: draft.data }
      : null;
  } catch {
    return null;
  }
}
