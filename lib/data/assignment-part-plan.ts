import type { Lab } from '../variants/labs';
import type { AssignmentPartInput } from './assignment-input';
import { failure, success, type Result } from './result';

/** Which stored part each wanted one goes on from (null: a new one), in order, and which are taken away. */
export type PartPlan = {
  keep: readonly { partId: string | null; part: AssignmentPartInput }[];
  remove: readonly string[];
};

/**
 * A part that names no stored one goes on from the next of the same lab that nobody named, so that what
 * comes without ids changes an assignment too. What students worked on stays, and stays of its lab: their
 * marks would hang in the air.
 */
export function planParts({
  stored,
  workedOn,
  next,
}: {
  stored: readonly { partId: string; lab: Lab }[];
  /** Parts that have attempts. */
  workedOn: ReadonlySet<string>;
  next: readonly AssignmentPartInput[];
}): Result<PartPlan> {
  const named = new Set(next.flatMap(({ id }) => id ?? []));
  const free = stored.filter(({ partId }) => !named.has(partId));
  const taken = new Set<string>();
  const goesOnFrom = (part: AssignmentPartInput): string | null => {
    if (part.id !== undefined)
      return stored.some(({ partId }) => partId === part.id) ? part.id : null;
    const found = free.find(({ partId, lab }) => lab === part.lab && !taken.has(partId));
    if (found !== undefined) taken.add(found.partId);
    return found?.partId ?? null;
  };
  const keep = next.map((part) => ({ partId: goesOnFrom(part), part }));
  const kept = new Set(keep.flatMap(({ partId }) => partId ?? []));
  for (const [index, { partId, lab }] of stored.entries()) {
    if (!workedOn.has(partId)) continue;
    if (!kept.has(partId)) {
      return failure(
        'part-has-work',
        `Part ${String(index + 1)} cannot be taken away: students have started it. Give it the weight 0 if it shall no longer count. Nothing was changed.`,
        'parts',
      );
    }
    const at = keep.findIndex((one) => one.partId === partId);
    if (keep[at]?.part.lab !== lab) {
      return failure(
        'part-has-work',
        `Part ${String(index + 1)} stays the lab that it is: students have started it. Add the other lab as a new part. Nothing was changed.`,
        `parts.${String(at)}.lab`,
      );
    }
  }
  return success({
    keep,
    remove: stored.map(({ partId }) => partId).filter((partId) => !kept.has(partId)),
  });
}
