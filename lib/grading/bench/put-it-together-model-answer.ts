import type { PutItTogetherVariant } from '../../variants/bench/put-it-together-variant';
import type { PutItTogetherSubmission } from './put-it-together-submission';

/** What an operator who makes no mistake hands in. */
export function putItTogetherModelAnswer(_variant: PutItTogetherVariant): PutItTogetherSubmission {
  return {};
}
