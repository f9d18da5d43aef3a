import { compassBearingOfNorthDeg } from '../../../clock/needle';
import type { ClockAndPlaceVariant } from '../../../variants/bench/clock-and-place/clock-and-place-variant';
import type { ClockAndPlaceSubmission } from './clock-and-place-submission';
import { rowsToMend } from './clock-criteria';

/** What an operator who makes no mistake hands in. */
export function clockAndPlaceModelAnswer(variant: ClockAndPlaceVariant): ClockAndPlaceSubmission {
  const { template, right, change, declinationDeg } = variant;
  const wrong = rowsToMend(variant);
  return {
    form: right,
    flagged: template === 'check-the-form' ? [...wrong] : [],
    named: template === 'dew-on-the-card' ? (wrong[0] ?? null) : null,
    verdict: change === null ? null : change.verdict,
    readings: change === null ? [] : [...change.canMean],
    asked: change !== null && change.meant !== null,
    compassDeg: declinationDeg === null ? null : compassBearingOfNorthDeg(declinationDeg),
  };
}
