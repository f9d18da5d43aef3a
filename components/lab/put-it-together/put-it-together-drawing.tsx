'use client';

import type { PutItTogetherDraft } from '@/lib/grading/bench/put-it-together/put-it-together-submission';
import type { PutItTogetherVariant } from '@/lib/variants/bench/put-it-together/put-it-together-variant';
import type { BenchViewProps } from '../bench/bench-parts';
import { StandDrawing } from './stand-drawing';
import { standInWords, standNow } from './stand-words';
import { StepCards } from './step-cards';

/** The telescope as it grows, and below it what lies ready to be done. */
export function PutItTogetherDrawing(
  props: BenchViewProps<PutItTogetherVariant, PutItTogetherDraft>,
) {
  const { variant, draft } = props;
  const stand = standNow(variant, draft);
  return (
    <div className="flex h-full flex-col bg-page">
      <div className="on-sky min-h-0 flex-1 p-2">
        <StandDrawing stand={stand} kind={variant.tubeType} label={standInWords(stand)} />
      </div>
      <div className="max-h-[46%] overflow-y-auto border-t-2 border-strong bg-panel p-4">
        <StepCards {...props} />
      </div>
    </div>
  );
}
