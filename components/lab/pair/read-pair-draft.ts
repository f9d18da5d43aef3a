import type { PairDraft } from '@/lib/grading/pair-submission';
import { pairDraftSchema } from '@/lib/grading/pair-submission';

/** A draft found in the tab's storage, or null where it is none. */
export function readPairDraft(json: unknown): PairDraft | null {
  const draft = pairDraftSchema.safeParse(json);
  return draft.success ? draft.data : null;
}
