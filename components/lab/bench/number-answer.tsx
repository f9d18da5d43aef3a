'use client';

import { useState } from 'react';
import { Field } from '@/components/ui/field';
import { TextInput } from '@/components/ui/text-input';
import { numberIn } from '../run/number-in';

type NumberAnswerProps = {
  label: string;
  hint?: string;
  /** Behind the field, spelt out: "arcminutes" */
  unit: string;
  value: number | null;
  least: number;
  most: number;
  onChange: (value: number | null) => void;
};

/** A number to be reckoned or measured. What cannot be read stays as typed, and is said. */
export function NumberAnswer({
  label,
  hint,
  unit,
  value,
  least,
  most,
  onChange,
}: NumberAnswerProps) {
  const [text, setText] = useState(value === null ? '' : String(value));
  // Undo, redo and starting afresh change the value from outside.
  const [shown, setShown] = useState(value);
  if (shown !== value) {
    setShown(value);
    if (numberIn(text, least, most) !== value) setText(value === null ? '' : String(value));
  }
  const unread = text.trim() !== '' && numberIn(text, least, most) === null;
  return (
    <Field
      label={label}
      hint={hint}
      error={
        unread ? `Type a number from ${String(least)} to ${String(most)}, such as 45 or 2.5.` : null
      }
    >
      {(control) => (
        <span className="flex items-baseline gap-2">
          <span className="w-28">
            <TextInput
              {...control}
              inputMode="decimal"
              autoComplete="off"
              value={text}
              onChange={(event) => {
                setText(event.target.value);
                const next = numberIn(event.target.value, least, most);
                if (next === value) return;
                setShown(next);
                onChange(next);
              }}
            />
          </span>
          {unit}
        </span>
      )}
    </Field>
  );
}
