'use client';

import { Minus, Plus } from 'lucide-react';
import { useId } from 'react';
import { Button } from '@/components/ui/button';
import { focusTravelMm, type FieldDraft } from '@/lib/grading/bench/field/field-submission';
import type { FieldVariant } from '@/lib/variants/bench/field/field-variant';
import type { BenchViewProps } from '../bench/bench-parts';

const stepMm = 0.1;

const within = (mm: number): number =>
  Math.round(Math.min(focusTravelMm, Math.max(-focusTravelMm, mm)) * 10) / 10 + 0;

/** The focuser: a knob that goes in and out, by hand or by tenths of a millimetre. */
export function Focuser({
  draft,
  change,
}: Pick<BenchViewProps<FieldVariant, FieldDraft>, 'draft' | 'change'>) {
  const id = useId();
  const to = (mm: number, merge = false) => {
    change({ ...draft, focusMm: within(mm) }, '', { merge });
  };
  return (
    <div className="space-y-1">
      <label htmlFor={id} className="font-semibold">
        Focus
      </label>
      <div className="flex items-center gap-2">
        <Button
          aria-label="Focuser in a tenth of a millimetre"
          onClick={() => {
            to(draft.focusMm - stepMm);
          }}
        >
          <Minus aria-hidden="true" className="size-4" />
        </Button>
        <input
          id={id}
          type="range"
          min={-focusTravelMm}
          max={focusTravelMm}
          step={stepMm}
          value={draft.focusMm}
          aria-valuetext={`${draft.focusMm.toFixed(1)} millimetres`}
          onChange={(event) => {
            to(event.target.valueAsNumber, true);
          }}
          className="h-11 min-w-0 flex-1 accent-[var(--lamp-edge)]"
        />
        <Button
          aria-label="Focuser out a tenth of a millimetre"
          onClick={() => {
            to(draft.focusMm + stepMm);
          }}
        >
          <Plus aria-hidden="true" className="size-4" />
        </Button>
        <span className="w-16 shrink-0 text-end text-sm font-figures">
          {draft.focusMm.toFixed(1)} mm
        </span>
      </div>
    </div>
  );
}
