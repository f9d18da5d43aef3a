import { mergedStarOf } from '@/lib/pointing/merged-stars';
import type { Evening } from './evening';

/** The plan, kept in view while it is carried out. */
export function PlannedPair({ evening: { catalogue, draft } }: { evening: Evening }) {
  const { first, second } = draft.plannedPair;
  if (first === null || second === null) return null;
  const nameOf = (hip: number): string =>
    mergedStarOf(catalogue, hip)?.name ?? `HIP ${String(hip)}`;
  return (
    <p className="mb-3 rounded-md bg-sunken p-3 text-sm">
      Your plan: first {nameOf(first)}, then {nameOf(second)}.
    </p>
  );
}
