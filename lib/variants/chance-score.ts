import { geometryMark, starMark, starMarkWithoutCaution } from '../pointing/pair-mark';
import type { AnswerKeyPair } from '../pointing/answer-key';
import type { WeighedStar } from './night';

/**
 * What somebody scores on average who picks blindly among the stars in question and names no
 * look-alike, 0–1 of what is to be earned: our measure of how hard a variant is. `pairs` are those
 * that the task allows, best first; with a given star its own share counts neither way.
 */
export function chanceScore(
  stars: readonly WeighedStar[],
  pairs: readonly AnswerKeyPair[],
  givenHip: number | null,
): number {
  const choices = stars.filter((star) => star.hip !== givenHip);
  if (choices.length === 0) return 0;
  const starShare = choices.reduce((sum, star) => sum + earned(star), 0) / choices.length;
  const hips = new Set(stars.map((star) => star.hip));
  const best = pairs[0]?.hitRate ?? 0;
  const geometry = pairs
    .filter((pair) => pair.stars.every((hip) => hips.has(hip) || hip === givenHip))
    .reduce((sum, pair) => sum + geometryMark(pair.hitRate, best), 0);
  if (givenHip !== null) return (starShare + geometry / choices.length) / (100 - starMark);
  const pairCount = (choices.length * (choices.length - 1)) / 2;
  return pairCount === 0 ? 0 : (2 * starShare + geometry / pairCount) / 100;
}

const earned = (star: WeighedStar): number => {
  if (!star.usable) return 0;
  return star.hasCaution ? starMarkWithoutCaution : starMark;
};
