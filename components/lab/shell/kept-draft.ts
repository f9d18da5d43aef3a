/** A draft that has not reached the server yet, kept for this tab. */
export type KeptDraft<Draft> = { sequence: number; draft: Draft };

/** What a lab makes of stored JSON: its draft, or null where that is none (any more). */
export type ReadDraft<Draft> = (json: unknown) => Draft | null;

const keyOf = (attemptKey: string): string => `duskbench-draft-${attemptKey}`;

function storage(): Storage | null {
  try {
    return window.sessionStorage;
  } catch {
    // A browser may refuse storage altogether: the draft then lives in memory alone.
    return null;
  }
}

export function keepDraft<Draft>(attemptKey: string, kept: KeptDraft<Draft>): void {
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
export function keptDraft<Draft>(
  attemptKey: string,
  readDraft: ReadDraft<Draft>,
): KeptDraft<Draft> | null {
  const text = storage()?.getItem(keyOf(attemptKey)) ?? null;
  if (text === null) return null;
  try {
    const json: unknown = JSON.parse(text);
    if (typeof json !== 'object' || json === null || !('sequence' in json) || !('draft' in json))
      return null;
    const draft = readDraft(json.draft);
    return typeof json.sequence === 'number' && draft !== null
      ? { sequence: json.sequence, draft }
      : null;
  } catch {
    return null;
  }
}
