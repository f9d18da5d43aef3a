'use client';

import type { PutItTogetherDraft } from '@/lib/grading/bench/put-it-together/put-it-together-submission';
import type { PutItTogetherVariant } from '@/lib/variants/bench/put-it-together/put-it-together-variant';
import type { BenchViewProps } from '../bench/bench-parts';
import { standInWords, standNow } from './stand-words';
import { StepCards } from './step-cards';

/** The same bench in words. */
export function PutItTogetherTable(
  props: BenchViewProps<PutItTogetherVariant, PutItTogetherDraft>,
) {
  const { variant, draft } = props;
  return (
    <div className="max-w-measure space-y-6">
      <section aria-labelledby="stands-heading" className="space-y-1">
        <h2 id="stands-heading" className="text-lg font-semibold">
          On the bench
        </h2>
        <p>{standInWords(standNow(variant, draft))}</p>
      </section>
      <StepCards {...props} />
    </div>
  );
}
