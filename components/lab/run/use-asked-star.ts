import type { RunModel } from './run-model';
import { useRunSnapshot } from './use-run-lab';

/** The star that the mount proposes or the task gives, and which of them; null where one may choose. */
export function useAskedStar(model: RunModel): { hip: number; by: 'proposed' | 'given' } | null {
  const { stage, proposedHip } = useRunSnapshot(model);
  const { givenHip } = model.variant;
  if (proposedHip !== null) return { hip: proposedHip, by: 'proposed' };
  return stage === 'choose-first' && givenHip !== null ? { hip: givenHip, by: 'given' } : null;
}
