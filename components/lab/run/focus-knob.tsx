'use client';

import { useId } from 'react';
import type { RunModel } from './run-model';
import { useRunSnapshot } from './use-run-lab';

/** The focuser's knob, as a wheel that is rolled to either side. */
export function FocusKnob({ model }: { model: RunModel }) {
  const id = useId();
  const { focus } = useRunSnapshot(model);
  return (
    <div className="flex items-center gap-2">
      <label htmlFor={id} className="text-sm font-semibold">
        Focus
      </label>
      <input
        id={id}
        type="range"
        min={-6}
        max={6}
        step={0.1}
        value={focus}
        aria-valuetext={`${focus > 0 ? 'out' : focus < 0 ? 'in' : 'middle'} ${Math.abs(focus).toFixed(1)} turns`}
        onChange={(event) => {
          model.setFocus(Number(event.target.value));
        }}
        className="knurled min-w-0 flex-1"
      />
    </div>
  );
}
