'use client';

import { ArrowDown, ArrowLeft, ArrowRight, ArrowUp } from 'lucide-react';
import type { ReactNode } from 'react';
import { useId, useState } from 'react';
import { TextInput } from '@/components/ui/text-input';
import { numberIn } from './number-in';
import type { RunModel } from './run-model';

/** A quarter of the way round is more than any search needs. */
const mostArcmin = 5400;

/** The same as the strips, by number: so far, then stop. */
export function StepMoves({ model, disabled }: { model: RunModel; disabled: boolean }) {
  const id = useId();
  const [text, setText] = useState('10');
  const size = numberIn(text, 0.1, mostArcmin);
  const move = (azimuth: number, altitude: number) => () => {
    if (size === null) {
      model.tell(`Type how far: a number of arcminutes up to ${String(mostArcmin)}.`);
      return;
    }
    model.step(azimuth * size, altitude * size);
  };
  const icon = 'size-4';
  return (
    <fieldset className="flex flex-wrap items-center gap-2" disabled={disabled}>
      <legend className="sr-only">Move in steps</legend>
      <label htmlFor={id} className="text-sm font-semibold">
        Step by
      </label>
      <span className="flex items-center gap-1">
        <span className="w-16">
          <TextInput
            id={id}
            inputMode="decimal"
            autoComplete="off"
            value={text}
            aria-invalid={size === null ? true : undefined}
            onChange={(event) => {
              setText(event.target.value);
            }}
          />
        </span>
        <abbr title="arcminutes" className="text-sm no-underline">
          ′
        </abbr>
      </span>
      <span className="flex gap-1">
        <StepButton label="Left" onPress={move(-1, 0)}>
          <ArrowLeft aria-hidden="true" className={icon} />
        </StepButton>
        <StepButton label="Right" onPress={move(1, 0)}>
          <ArrowRight aria-hidden="true" className={icon} />
        </StepButton>
        <StepButton label="Down" onPress={move(0, -1)}>
          <ArrowDown aria-hidden="true" className={icon} />
        </StepButton>
        <StepButton label="Up" onPress={move(0, 1)}>
          <ArrowUp aria-hidden="true" className={icon} />
        </StepButton>
      </span>
    </fieldset>
  );
}

function StepButton(props: { label: string; onPress: () => void; children: ReactNode }) {
  return (
    <button
      type="button"
      aria-label={props.label}
      title={props.label}
      onClick={props.onPress}
      className="grid size-(--target) place-items-center rounded-md border border-strong bg-panel hover:border-ink hover:bg-sunken disabled:opacity-60"
    >
      {props.children}
    </button>
  );
}
