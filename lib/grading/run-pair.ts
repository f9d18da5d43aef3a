import type { AnswerKey, AnswerKeyPair } from '../pointing/answer-key';
import { geometryFullMark, geometryMark } from '../pointing/pair-mark';
import { deadBand } from '../pointing/usable-stars';
import type { StarCatalogue } from '../sky/catalogue';
import type { RunVariant } from '../variants/run-variant';
import { keyStarOf } from './judge-pick';
import { bestOf, figuresOf, rated } from './pair-figures';
import type { RunResult } from './run-result';
import { reasonsWithSlack } from './reasons-with-slack';

/** How good a pair was chosen; `share` is null where the evening had no right pair to compare with. */
export type JudgedPair = { figures: RunResult['pair']; share: number | null };

/** Judges the pair that was meant, whatever was confirmed in its place, by the rule of "Pick the pair". */
export function judgePair(
  judging: { variant: RunVariant; answerKey: AnswerKey; catalogue: StarCatalogue },
  hips: readonly [number, number],
): JudgedPair {
  const { variant, answerKey } = judging;
  const right = answerKey.pairs.filter((pair) => isOpen(variant, pair));
  const best = bestOf(answerKey, right);
  const one = keyStarOf(judging, hips[0]);
  const other = keyStarOf(judging, hips[1]);
  if (one === null || other === null) {
    // Below the horizon when the run began: it had risen by the time it was gone to.
    return { figures: { chosen: null, best }, share: best === null ? null : 0 };
  }
  const chosen = figuresOf(rated(variant.scenario, answerKey, [one, other]), [one, other]);
  const usable = [one, other].every(
    (star) => reasonsWithSlack(variant, star, deadBand).length === 0,
  );
  const earned = usable && best !== null ? geometryMark(chosen.hitRate, best.hitRate) : 0;
  return { figures: { chosen, best }, share: best === null ? null : earned / geometryFullMark };
}

/** Whether the task let this pair be aligned on, and it determines the fit. */
const isOpen = (
  { givenHip, proposals }: RunVariant,
  { stars, expectedErrorArcmin }: AnswerKeyPair,
): boolean =>
  expectedErrorArcmin !== null &&
  (givenHip === null || stars.includes(givenHip)) &&
  (proposals === null || stars.every((hip) => proposals.includes(hip)));
