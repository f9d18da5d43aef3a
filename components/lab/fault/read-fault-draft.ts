import type { FaultDraft } from '@/lib/grading/fault-submission';
import { faultDraftSchema } from '@/lib/grading/fault-submission';

/** A draft from the tab's storage; null where it is none. */
export function readFaultDraft(json: unknown): FaultDraft | null {
  const draft = faultDraftSchema.safeParse(json);
  return draft.success ? draft.data : null;
}
