import type { Evidence } from './evidence';
import { masteryOf } from './mastery';

/** What a piece of evidence changed: the row as it stood afterwards, mastery, or a review that it passed. */
export type Made = { inARow: number } | 'mastery' | 'review';

/**
 * What the piece at `index` changed, from the standing before it and the one after it. The pieces are
 * of one student and one skill, in order of time.
 */
export function whatItMade(pieces: readonly Evidence[], index: number): Made {
  const at = pieces[index]?.at ?? new Date(0);
  const before = masteryOf(pieces.slice(0, index), at);
  const after = masteryOf(pieces.slice(0, index + 1), at);
  if (before.masteredAt === null && after.masteredAt !== null) return 'mastery';
  if (after.reviewsPassed > before.reviewsPassed) return 'review';
  return { inARow: after.inARow };
}
