import type { AnswerKey, AnswerKeyPair } from '../pointing/answer-key';
import { againstTheStar } from '../pointing/usable-stars';
import type { PairVariant } from '../variants/pair-variant';
import { reasonsWithSlack } from './reasons-with-slack';

/** Whether the task lets this pair be chosen: all, those with the given star, those proposed. */
export function taskAllows(
  { template, givenHip, proposals }: Pick<PairVariant, 'template' | 'givenHip' | 'proposals'>,
  stars: readonly [number, number],
): boolean {
  switch (template) {
    case 'partner':
      return givenHip === null || stars.includes(givenHip);
    case 'mount-proposes':
      return proposals === null || stars.every((hip) => proposals.includes(hip));
    case 'free-pair':
    case 'cloud-bank':
    case 'none-usable':
      return true;
  }
}

/** The pairs a student could rightly choose, best first: usable, determined and within the task. */
export const rightPairs = (variant: PairVariant, key: AnswerKey): readonly AnswerKeyPair[] =>
  key.pairs.filter((pair) => pair.expectedErrorArcmin !== null && taskAllows(variant, pair.stars));

/**
 * The same with every limit moved by the dead band against the stars. When nothing is left, a student
 * who says that there is no pair is given the benefit of it.
 */
export function clearPairs(variant: PairVariant, key: AnswerKey): readonly AnswerKeyPair[] {
  const clear = new Set(
    key.stars
      .filter((star) => star.usable)
      .filter((star) => reasonsWithSlack(variant, star, againstTheStar).length === 0)
      .map((star) => star.hip),
  );
  return rightPairs(variant, key).filter((pair) => pair.stars.every((hip) => clear.has(hip)));
}
