import type { AnswerKey } from './answer-key';
import { answerKeyFor } from './answer-key-for';

/** A student may take any star this bright for an alignment star; fainter ones are too many to keep. */
const faintestStored = 3.5;

/**
 * The answer key as it is stored with an attempt: all that can be usable and what could be taken for
 * it, without the thousands of faint stars that nobody picks. A pick outside it is judged afresh.
 */
export function storedAnswerKey(input: Parameters<typeof answerKeyFor>[0]): AnswerKey {
  const faintestListed = Math.max(faintestStored, input.scenario.settings.faintestMagnitude + 0.1);
  return answerKeyFor({ ...input, faintestListed });
}
