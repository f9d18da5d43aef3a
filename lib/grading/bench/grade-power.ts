import type { PowerVariant } from '../../variants/bench/power-variant';
import type { BenchGrading } from './bench-result';
import type { PowerResult } from './power-result';
import type { PowerSubmission } from './power-submission';

/** Goes up whenever the same submission could earn other marks. */
export const powerGraderVersion = 1;

export function gradePower({
  variant,
}: {
  variant: PowerVariant;
  submission: PowerSubmission;
}): BenchGrading<PowerResult> {
  return {
    ok: true,
    result: {
      lab: 'power',
      graderVersion: powerGraderVersion,
      template: variant.template,
      total: 0,
      criteria: [{ id: 'all', earned: 0, possible: 100 }],
      gates: [],
      slips: [],
    },
  };
}
