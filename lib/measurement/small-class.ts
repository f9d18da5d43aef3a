/** Fewer than this: counts, and no figure made of them. Our judgement (design: assessment). */
const fewestForShares = 10;
/** Fewer than this: discrimination and reliability are too few to trust. Our judgement. */
export const fewestToTrust = 30;

/** How much may be said from so many people. */
export type Footing = 'counts-only' | 'too-few-to-trust' | 'enough';

export const footingOf = (people: number): Footing =>
  people < fewestForShares ? 'counts-only' : people < fewestToTrust ? 'too-few-to-trust' : 'enough';

/** Above this share nearly all are right. */
const nearlyAll = 0.9;
/** Below this share most are not. */
const few = 0.4;

/**
 * What a teacher may want to look at. Nearly all right is how questions of a mastery course are meant
 * to end: they tell people apart badly, and nothing is wrong with them.
 */
export type ItemNote = 'against-the-rest' | 'hard' | 'nearly-all-right';

/** Of an item that so many answered; `itemRest` null where it cannot be reckoned. Bounds: our judgement. */
export function itemNote(item: {
  people: number;
  difficulty: number;
  itemRest: number | null;
}): ItemNote | null {
  const footing = footingOf(item.people);
  if (footing === 'counts-only') return null;
  if (item.difficulty >= nearlyAll) return 'nearly-all-right';
  if (footing === 'enough' && item.itemRest !== null && item.itemRest < 0)
    return 'against-the-rest';
  return item.difficulty < few ? 'hard' : null;
}
