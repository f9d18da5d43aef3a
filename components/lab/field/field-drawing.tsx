'use client';

import type { FieldDraft } from '@/lib/grading/bench/field/field-submission';
import type { FieldVariant } from '@/lib/variants/bench/field/field-variant';
import type { BenchViewProps } from '../bench/bench-parts';
import { DotScene } from './dot-scene';
import { EyepieceBox } from './eyepiece-box';
import { EyepieceCircle } from './eyepiece-circle';
import { eyepieceView } from './field-view';
import { Focuser } from './focuser';
import { viewInWords } from './view-words';

/** The view through the eyepiece, and under it what is done to it: eyepieces and focuser. */
export function FieldDrawing({ variant, draft, change }: BenchViewProps<FieldVariant, FieldDraft>) {
  const view = eyepieceView(variant, draft);
  return (
    <div className="flex h-full flex-col bg-page">
      <div className="on-sky flex min-h-0 flex-1 items-center justify-center gap-4 p-3 lg:p-6">
        {variant.template === 'lost-star' ? (
          <div className="h-full max-h-[22rem] min-w-0 flex-1">
            <DotScene
              star={variant.starOnSky}
              label="Past the dot, with the eye: the star stands beside it"
            />
          </div>
        ) : null}
        <div className="h-full min-w-0 flex-1">
          <EyepieceCircle
            view={view}
            label={viewInWords(variant, draft).join(' ')}
            marks={saidOf(draft)}
          />
        </div>
      </div>
      <div className="grid grid-cols-[minmax(0,1fr)] gap-x-8 gap-y-3 border-t-2 border-strong bg-panel p-4 lg:grid-cols-2">
        <EyepieceBox {...{ variant, draft, change }} />
        <Focuser {...{ draft, change }} />
      </div>
    </div>
  );
}

/** Where the learner says that the star will appear: half-way out, since only the side is asked. */
function saidOf({ view }: FieldDraft) {
  if (view === null || view.along === null || view.up === null) return [];
  const [right, up] = [view.along === 'right' ? 0.45 : -0.45, view.up === 'up' ? 0.45 : -0.45];
  return [{ right, up, kind: 'said' as const }];
}
