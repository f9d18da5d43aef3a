import { directionFromAzAlt, separationDeg } from '../units/vector';
import type { AnswerKeyPair } from './answer-key';
import { pairErrorModel } from './pair-error-model';
import { geometryMark, mostWithoutAnyPair, starMark } from './pair-mark';
import { expectedErrorArcmin, hitRate } from './pair-worth';
import type { Telescope } from './scenario';
import type { StarPosition } from './star-position';

export type RankedStar = StarPosition & { hip: number };

/** What two stars are worth together, before it is compared with the best. */
export function ratePair(
  telescope: Telescope,
  fieldRadiusArcmin: number,
  star1: RankedStar,
  star2: RankedStar,
): Omit<AnswerKeyPair, 'mark'> {
  const model = pairErrorModel(telescope, star1, star2);
  return {
    stars: [star1.hip, star2.hip],
    separationDeg: separationDeg(
      directionFromAzAlt(star1.azimuthDeg, star1.altitudeDeg),
      directionFromAzAlt(star2.azimuthDeg, star2.altitudeDeg),
    ),
    expectedErrorArcmin: model && expectedErrorArcmin(model),
    hitRate: model === null ? 0 : hitRate(model, fieldRadiusArcmin),
  };
}

/**
 * Every pair of the stars, best first: by hit rate, then by expected error, undetermined ones last.
 * The mark is that of choosing the pair with every caution named.
 */
export function rankPairs(
  stars: readonly RankedStar[],
  telescope: Telescope,
  fieldRadiusArcmin: number,
): AnswerKeyPair[] {
  const rated = stars.flatMap((star1, i) =>
    stars.slice(i + 1).map((star2) => ratePair(telescope, fieldRadiusArcmin, star1, star2)),
  );
  rated.sort(bestFirst);
  const best = rated[0];
  const anyDetermined = best !== undefined && best.expectedErrorArcmin !== null;
  return rated.map((pair) => ({
    ...pair,
    mark: anyDetermined
      ? 2 * starMark + geometryMark(pair.hitRate, best.hitRate)
      : mostWithoutAnyPair,
  }));
}

function bestFirst(a: Omit<AnswerKeyPair, 'mark'>, b: Omit<AnswerKeyPair, 'mark'>): number {
  if (a.hitRate !== b.hitRate) return b.hitRate - a.hitRate;
  // Infinity less Infinity is no order; two undetermined pairs are equally bad.
  if (a.expectedErrorArcmin === b.expectedErrorArcmin) return 0;
  return (a.expectedErrorArcmin ?? Infinity) - (b.expectedErrorArcmin ?? Infinity);
}
