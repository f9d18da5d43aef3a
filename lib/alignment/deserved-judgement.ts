/**
 * What an alignment deserves. Hit rates are shares of go-tos that land in the observing eyepiece:
 * achieved, and of a perfect operator with the same stars on the same mount. Null: none was reached,
 * since the two stars did not agree. The limits are ours, without a source; between them a careful
 * person may say either.
 */
export function deservedJudgement(
  achievedHitRate: number | null,
  perfectHitRate: number,
): 'trust' | 'doubt' | 'either' {
  if (achievedHitRate === null || achievedHitRate < 0.4 * perfectHitRate) return 'doubt';
  return achievedHitRate >= 0.7 * perfectHitRate ? 'trust' : 'either';
}
