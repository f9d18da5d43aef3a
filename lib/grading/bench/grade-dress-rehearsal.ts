import type { DressRehearsalVariant } from '../../variants/bench/dress-rehearsal-variant';
import type { BenchGrading } from './bench-result';
import type { DressRehearsalResult } from './dress-rehearsal-result';
import type { DressRehearsalSubmission } from './dress-rehearsal-submission';

/** Goes up whenever the same submission could earn other marks. */
export const dressRehearsalGraderVersion = 1;

export function gradeDressRehearsal({
  variant,
}: {
  variant: DressRehearsalVariant;
  submission: DressRehearsalSubmission;
}): BenchGrading<DressRehearsalResult> {
  return {
    ok: true,
    result: {
      lab: 'dress-rehearsal',
      graderVersion: dressRehearsalGraderVersion,
      template: variant.template,
      total: 0,
      criteria: [{ id: 'all', earned: 0, possible: 100 }],
      gates: [],
      slips: [],
    },
  };
}
