'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { TextInput } from '@/components/ui/text-input';

type LegLengthProps = { label: string; valueMm: number; onSet: (mm: number) => void };

const steps = [-10, -1, 1, 10];

/** A leg's length in whole millimetres: by steps, or typed and set. */
export function LegLength({ label, valueMm, onSet }: LegLengthProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const wrong = typed !== null && !/^\s*\d{1,4}\s*$/.test(typed);
  return (
    <form
      className="space-y-2"
      onSubmit={(event) => {
        event.preventDefault();
        if (typed === null || wrong) return;
        setTyped(null);
        onSet(Number(typed));
      }}
    >
      <Field label={label} error={wrong ? 'Type whole millimetres, such as 950.' : null}>
        {(control) => (
          <span className="flex items-center gap-2">
            <TextInput
              {...control}
              inputMode="numeric"
              autoComplete="off"
              className="max-w-24"
              value={typed ?? String(valueMm)}
              onChange={(event) => {
                setTyped(event.target.value);
              }}
            />
            mm
            <Button type="submit">Set</Button>
          </span>
        )}
      </Field>
      <div className="flex flex-wrap gap-2">
        {steps.map((step) => (
          <Button
            key={step}
            aria-label={`${label}: ${step > 0 ? 'plus' : 'minus'} ${String(Math.abs(step))} mm`}
            onClick={() => {
              setTyped(null);
              onSet(valueMm + step);
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
