'use client';

import { useState } from 'react';
import { Field } from '@/components/ui/field';
import { TextInput } from '@/components/ui/text-input';

type ReadingFieldProps = {
  label: string;
  hint?: string;
  value: number | null;
  onChange: (value: number | null) => void;
};

/** Digits, and one comma or point; null for what is no number. */
export function readMillimetres(text: string): number | null {
  const plain = text.trim().replace(',', '.');
  if (!/^-?\d{1,4}([.]\d{0,2})?$/.test(plain)) return null;
  const value = Number(plain);
  return value >= -1000 && value <= 3000 ? value : null;
}

/** A place on the tape, typed. What stands in it follows the work when that is undone. */
export function ReadingField({ label, hint, value, onChange }: ReadingFieldProps) {
  const [text, setText] = useState('');
  const shown = readMillimetres(text) === value ? text : value === null ? '' : String(value);
  return (
    <Field label={label} hint={hint}>
      {(control) => (
        <TextInput
          {...control}
          inputMode="decimal"
          autoComplete="off"
          className="max-w-40"
          value={shown}
          onChange={(event) => {
            setText(event.target.value);
            onChange(readMillimetres(event.target.value));
          }}
        />
      )}
    </Field>
  );
}
