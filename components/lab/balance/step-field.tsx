'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { TextInput } from '@/components/ui/text-input';
import { readMillimetres } from './reading-field';

type StepFieldProps = {
  label: string;
  unit: string;
  /** Steps of the buttons, such as −10, −1, 1, 10. */
  steps: readonly number[];
  value: number;
  onSet: (value: number) => void;
};

/** A number that is set by steps or typed and set; what cannot be is said in the status line. */
export function StepField({ label, unit, steps, value, onSet }: StepFieldProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const set = (): void => {
    const number = typed === null ? null : readMillimetres(typed);
    setTyped(null);
    if (number !== null) onSet(number);
  };
  return (
    <form
      className="space-y-2"
      onSubmit={(event) => {
        event.preventDefault();
        set();
      }}
    >
      <Field label={label}>
        {(control) => (
          <span className="flex items-center gap-2">
            <TextInput
              {...control}
              inputMode="decimal"
              autoComplete="off"
              className="max-w-28"
              value={typed ?? String(Math.round(value))}
              onChange={(event) => {
                setTyped(event.target.value);
              }}
            />
            {unit}
            <Button type="submit">Set</Button>
          </span>
        )}
      </Field>
      <div className="flex flex-wrap gap-2">
        {steps.map((step) => (
          <Button
            key={step}
            aria-label={`${label}: ${step > 0 ? 'plus' : 'minus'} ${String(Math.abs(step))} ${unit}`}
            onClick={() => {
              setTyped(null);
              onSet(Math.round(value) + step);
            }}
          >
            {step > 0 ? '+' : '−'}
            {Math.abs(step)}
          </Button>
        ))}
      </div>
    </form>
  );
}
