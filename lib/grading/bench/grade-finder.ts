import type { FinderVariant } from '../../variants/bench/finder-variant';
import type { BenchGrading } from './bench-result';
import type { FinderResult } from './finder-result';
import type { FinderSubmission } from './finder-submission';

/** Goes up whenever the same submission could earn other marks. */
export const finderGraderVersion = 1;

export function gradeFinder({
  variant,
}: {
  variant: FinderVariant;
  submission: FinderSubmission;
}): BenchGrading<FinderResult> {
  return {
    ok: true,
    result: {
      lab: 'finder',
      graderVersion: finderGraderVersion,
      template: variant.template,
      total: 0,
      criteria: [{ id: 'all', earned: 0, possible: 100 }],
      gates: [],
      slips: [],
    },
  };
}
