import { rightPairs } from '../grading/allowed-pairs';
import type { PairSubmission } from '../grading/pair-submission';
import type { AnswerKey } from '../pointing/answer-key';
import type { PairVariant } from '../variants/pair-variant';

/** How well an invented student does: finds the best pair, a middling one, or the poorest there is. */
export type DemoSkill = 'best' | 'middling' | 'poor';

/** An answer of that quality. Only the good ones look out for what could be mistaken for a star. */
export function demoChoice(
  variant: PairVariant,
  answerKey: AnswerKey,
  skill: DemoSkill,
): PairSubmission {
  const pairs = rightPairs(variant, answerKey);
  const best = pairs[0];
  if (best === undefined) return pairWithoutHope(answerKey, skill);
  const middling =
    pairs.find(({ hitRate }) => hitRate < 0.85 * best.hitRate) ?? pairs.at(-1) ?? best;
  const pair = { best, middling, poor: pairs.at(-1) ?? best }[skill];
  const chosen = (hip: number) => {
    const caution = answerKey.stars.find((star) => star.hip === hip)?.cautions[0];
    return { hip, lookAlike: skill === 'best' ? (caution?.neighbour ?? null) : null };
  };
  const [one, other] = pair.stars;
  const ordered = other === variant.givenHip ? [other, one] : [one, other];
  const [first = one, second = other] = ordered;
  return { kind: 'pair', stars: [chosen(first), chosen(second)] };
}

/** The night has no usable pair: the good ones say so, the others take the two brightest in sight. */
function pairWithoutHope({ stars }: AnswerKey, skill: DemoSkill): PairSubmission {
  const [first, second] = stars
    .filter(({ altitudeDeg }) => altitudeDeg > 5)
    .toSorted((a, b) => a.magnitude - b.magnitude);
  if (skill === 'best' || first === undefined || second === undefined)
    return { kind: 'none-usable' };
  return {
    kind: 'pair',
    stars: [
      { hip: first.hip, lookAlike: null },
      { hip: second.hip, lookAlike: null },
    ],
  };
}
