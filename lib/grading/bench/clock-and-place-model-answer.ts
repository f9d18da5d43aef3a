import type { ClockAndPlaceVariant } from '../../variants/bench/clock-and-place-variant';
import type { ClockAndPlaceSubmission } from './clock-and-place-submission';

/** What an operator who makes no mistake hands in. */
export function clockAndPlaceModelAnswer(_variant: ClockAndPlaceVariant): ClockAndPlaceSubmission {
  return {};
}
