import { storedAnswerKey } from '../pointing/stored-answer-key';
import type { RunInput } from './run-input';

/** The two stars an operator goes to, in order. */
export type OperatorStars = readonly [first: number, second: number];

/**
 * The best pair that the task leaves open, by the answer key: with the given star first, or out of the
 * proposals in the order in which they come. Null when no pair of usable stars is left.
 */
export function bestStars(input: RunInput): OperatorStars | null {
  const { scenario, frame, catalogue, givenHip, proposals } = input;
  const { pairs } = storedAnswerKey({ scenario, instant: frame.instant, frame, catalogue });
  for (const {
    stars: [a, b],
  } of pairs) {
    for (const [first, second] of [[a, b] as const, [b, a] as const]) {
      if (givenHip !== null && first !== givenHip) continue;
      if (proposals === null) return [first, second];
      const from = givenHip === null ? proposals.indexOf(first) : 0;
      if (from >= 0 && proposals.indexOf(second) >= from) return [first, second];
    }
  }
  return null;
}
