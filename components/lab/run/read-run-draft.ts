import type { RunDraft } from '@/lib/grading/run-submission';
import { runDraftSchema } from '@/lib/grading/run-submission';

/** A draft found in the tab's storage, or null where it is none. */
export function readRunDraft(json: unknown): RunDraft | null {
  const draft = runDraftSchema.safeParse(json);
  return draft.success ? draft.data : null;
}
