import type { PowerVariant } from '../../variants/bench/power-variant';
import type { PowerSubmission } from './power-submission';

/** What an operator who makes no mistake hands in. */
export function powerModelAnswer(_variant: PowerVariant): PowerSubmission {
  return {};
}
