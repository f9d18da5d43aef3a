import type { DressRehearsalVariant } from '../../variants/bench/dress-rehearsal-variant';
import type { DressRehearsalSubmission } from './dress-rehearsal-submission';

/** What an operator who makes no mistake hands in. */
export function dressRehearsalModelAnswer(
  _variant: DressRehearsalVariant,
): DressRehearsalSubmission {
  return {};
}
