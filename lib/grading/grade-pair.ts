import type { AnswerKeyStar } from '../pointing/answer-key';
import {
  geometryFullMark,
  geometryMark,
  mostWithoutAnyPair,
  starMark,
  starMarkWithoutCaution,
} from '../pointing/pair-mark';
import type { PairVariant } from '../variants/pair-variant';
import { clearPairs, rightPairs, taskAllows } from './allowed-pairs';
import { cautionMissed, judgePick, keyStarOf, type Judging } from './judge-pick';
import { pairAdvice } from './pair-advice';
import { bestOf, figuresOf, rated } from './pair-figures';
import type { PairCriterion, PairResult, PairStarResult } from './pair-result';
import type { PairRefusal, PairSubmission } from './pair-submission';
import { totalOf } from './total-of';

/** Goes up whenever the same submission could earn other marks. */
export const pairGraderVersion = 1;

export type PairGrading = { ok: true; result: PairResult } | { ok: false; refusal: PairRefusal };

/**
 * Marks one submission of "Pick the pair" from the stored variant and answer key alone, so that a
 * regrade is a replay. The student gets the benefit of the dead band at every limit. Rules and marks:
 * design, answer key. Never throws on a submission that its schema lets through.
 */
export function gradePair({
  variant,
  answerKey,
  submission,
  catalogue,
}: Judging & { submission: PairSubmission }): PairGrading {
  const judging = { variant, answerKey, catalogue };
  if (submission.kind === 'none-usable') return { ok: true, result: gradeNone(judging) };

  const [one, other] = submission.stars;
  const star1 = keyStarOf(judging, one.hip);
  const star2 = keyStarOf(judging, other.hip);
  if (star1 === null) return refuse({ code: 'not-in-this-sky', hip: one.hip });
  if (star2 === null) return refuse({ code: 'not-in-this-sky', hip: other.hip });
  if (star1.hip === star2.hip) return refuse({ code: 'same-star-twice' });
  const refusal = againstTheTask(variant, [star1, star2]);
  if (refusal !== null) return refuse(refusal);

  return {
    ok: true,
    result: gradeChoice(judging, [
      judgePick(judging, star1, one.lookAlike),
      judgePick(judging, star2, other.lookAlike),
    ]),
  };
}

const refuse = (refusal: PairRefusal): PairGrading => ({ ok: false, refusal });

function againstTheTask(
  variant: PairVariant,
  stars: readonly [AnswerKeyStar, AnswerKeyStar],
): PairRefusal | null {
  if (taskAllows(variant, [stars[0].hip, stars[1].hip])) return null;
  if (variant.template === 'partner' && variant.givenHip !== null) {
    return { code: 'given-star-missing', givenHip: variant.givenHip };
  }
  const stranger = stars.find(({ hip }) => variant.proposals?.includes(hip) !== true);
  return { code: 'not-proposed', hip: stranger?.hip ?? stars[0].hip };
}

function gradeNone(judging: Judging): PairResult {
  const { variant, answerKey } = judging;
  const right = rightPairs(variant, answerKey);
  const agreed = clearPairs(variant, answerKey).length === 0;
  const earned = agreed ? 100 : 0;
  return {
    lab: 'pick-the-pair',
    graderVersion: pairGraderVersion,
    template: variant.template,
    total: earned,
    criteria: [{ id: 'none-usable', earned, possible: 100 }],
    stars: [],
    chosen: null,
    best: bestOf(judging.answerKey, right),
    advice: agreed
      ? { code: 'said-none-rightly' }
      : { code: 'said-none-wrongly', usablePairs: right.length },
  };
}

function gradeChoice(
  judging: Judging,
  picks: readonly [PairStarResult, PairStarResult],
): PairResult {
  const { variant, answerKey } = judging;
  const chosen = figuresOf(rated(variant.scenario, judging.answerKey, picks), picks);
  const right = rightPairs(variant, answerKey);
  const bothUsable = picks.every((pick) => pick.usable);
  // On the edge of the dead band the student's own pair may be all there is.
  const ownOnly =
    right.length === 0 && bothUsable && chosen.expectedErrorArcmin !== null ? chosen : null;
  const bestHitRate = right[0]?.hitRate ?? ownOnly?.hitRate ?? 0;
  const geometryEarned = bothUsable ? geometryMark(chosen.hitRate, bestHitRate) : 0;
  const criteria: PairCriterion[] = [
    { id: 'first-star', earned: starEarned(picks[0], variant), possible: starMark },
    { id: 'second-star', earned: starEarned(picks[1], variant), possible: starMark },
    { id: 'geometry', earned: geometryEarned, possible: geometryFullMark },
  ];
  const thereWasNone = right.length === 0 && ownOnly === null;
  const counted = thereWasNone ? withoutAnyPair(criteria) : criteria;
  return {
    lab: 'pick-the-pair',
    graderVersion: pairGraderVersion,
    template: variant.template,
    total: totalOf(counted),
    criteria: counted,
    stars: picks,
    chosen,
    best: ownOnly ?? bestOf(judging.answerKey, right),
    advice: thereWasNone
      ? { code: 'there-was-none' }
      : pairAdvice({
          picks,
          givenHip: variant.template === 'partner' ? variant.givenHip : null,
          chosen,
          bestHitRate,
          geometryEarned,
          telescope: variant.scenario.telescope,
        }),
  };
}

/**
 * On a night without any pair choosing earns so much at most. Every part gives way in proportion, so
 * that the parts a student is shown still add up to the mark.
 */
function withoutAnyPair(criteria: readonly PairCriterion[]): PairCriterion[] {
  const share = Math.min(1, mostWithoutAnyPair / totalOf(criteria));
  return criteria.map((criterion) => ({ ...criterion, earned: share * criterion.earned }));
}

function starEarned(pick: PairStarResult, variant: PairVariant): number {
  // Choosing the given star was not the student's doing.
  if (variant.template === 'partner' && pick.hip === variant.givenHip) return starMark;
  if (!pick.usable) return 0;
  return cautionMissed(pick) ? starMarkWithoutCaution : starMark;
}
