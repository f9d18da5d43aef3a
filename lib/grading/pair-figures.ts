import type { AnswerKey, AnswerKeyPair, AnswerKeyStar } from '../pointing/answer-key';
import { fieldRadiusArcmin } from '../pointing/field-radius';
import { ratePair } from '../pointing/rank-pairs';
import type { Scenario } from '../pointing/scenario';
import type { PairFigures } from './pair-result';

/** As the stored key has it, so that a regrade is a replay; worked out for what the key leaves out. */
export function rated(
  scenario: Pick<Scenario, 'telescope' | 'eyepiece'>,
  answerKey: AnswerKey,
  [one, other]: readonly [RatedStar, RatedStar],
): Omit<AnswerKeyPair, 'mark'> {
  const stored = answerKey.pairs.find(
    ({ stars }) => stars.includes(one.hip) && stars.includes(other.hip),
  );
  if (stored !== undefined) return { ...stored, stars: [one.hip, other.hip] };
  const radius = fieldRadiusArcmin(scenario.telescope, scenario.eyepiece);
  return ratePair(scenario.telescope, radius, one, other);
}

export type RatedStar = Pick<AnswerKeyStar, 'hip' | 'name' | 'azimuthDeg' | 'altitudeDeg'>;

/** The first of the pairs that were right, with its stars; null when there is none. */
export function bestOf(answerKey: AnswerKey, right: readonly AnswerKeyPair[]): PairFigures | null {
  const [best] = right;
  if (best === undefined) return null;
  const [one, other] = best.stars.map((hip) => answerKey.stars.find((star) => star.hip === hip));
  // A key that lists a pair without its stars is broken; there is then no position to show.
  return one === undefined || other === undefined ? null : figuresOf(best, [one, other]);
}

export function figuresOf(
  { stars, separationDeg, expectedErrorArcmin, hitRate }: Omit<AnswerKeyPair, 'mark'>,
  [one, other]: readonly [RatedStar, RatedStar],
): PairFigures {
  const position = ({ azimuthDeg, altitudeDeg }: RatedStar) => ({ azimuthDeg, altitudeDeg });
  return {
    stars,
    separationDeg,
    expectedErrorArcmin,
    hitRate,
    names: [one.name, other.name],
    positions: [position(one), position(other)],
  };
}
