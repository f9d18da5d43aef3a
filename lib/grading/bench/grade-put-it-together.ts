import type { PutItTogetherVariant } from '../../variants/bench/put-it-together-variant';
import type { BenchGrading } from './bench-result';
import type { PutItTogetherResult } from './put-it-together-result';
import type { PutItTogetherSubmission } from './put-it-together-submission';

/** Goes up whenever the same submission could earn other marks. */
export const putItTogetherGraderVersion = 1;

export function gradePutItTogether({
  variant,
}: {
  variant: PutItTogetherVariant;
  submission: PutItTogetherSubmission;
}): BenchGrading<PutItTogetherResult> {
  return {
    ok: true,
    result: {
      lab: 'put-it-together',
      graderVersion: putItTogetherGraderVersion,
      template: variant.template,
      total: 0,
      criteria: [{ id: 'all', earned: 0, possible: 100 }],
      gates: [],
      slips: [],
    },
  };
}
