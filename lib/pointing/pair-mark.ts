/** What the parts of a choice are worth; they make 100 together. */
export const starMark = 25;
/** A usable star whose look-alike was not named. */
export const starMarkWithoutCaution = 15;
export const geometryFullMark = 50;
/** The most that choosing stars can earn on a night without a usable pair. */
export const mostWithoutAnyPair = 40;

/**
 * Marks for how well two usable stars go together, from the hit rate and the best one to be had:
 * full within 2 % of the best, none at half of it.
 */
export function geometryMark(hitRate: number, bestHitRate: number): number {
  if (bestHitRate <= 0) return 0;
  const share = (hitRate - bestHitRate / 2) / (0.48 * bestHitRate);
  return geometryFullMark * Math.min(1, Math.max(0, share));
}
