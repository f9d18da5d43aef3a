'use client';

import { useId, useState } from 'react';
import { FieldError } from '@/components/ui/field';
import { TextInput } from '@/components/ui/text-input';

type NumberFieldProps = {
  label: string;
  least: number;
  most: number;
  value: number | null;
  onChange: (value: number | null) => void;
  /** Behind the number: ° or ′. */
  unit?: string;
  /** Behind the point; none by default. */
  decimals?: boolean;
  className?: string;
};

/** A number that is typed; null for none, and for one that the row cannot take. */
export function NumberField(props: NumberFieldProps) {
  const { label, least, most, value, onChange, unit, decimals = false } = props;
  const id = useId();
  const [text, setText] = useState('');
  const read = (typed: string): number | null => {
    const plain = typed.trim().replace(',', '.');
    if (!(decimals ? /^\d{1,4}([.]\d?)?$/ : /^\d{1,4}$/).test(plain)) return null;
    const number = Number(plain);
    return number >= least && number <= most ? number : null;
  };
  // What stands in it follows the work when that is undone.
  const shown = read(text) === value ? text : value === null ? '' : String(value);
  const errorId = `${id}-error`;
  const outside = shown.trim() !== '' && read(shown) === null;
  return (
    <div className={`flex flex-col text-sm ${props.className ?? 'w-20'}`}>
      <label htmlFor={id} className="text-soft">
        {label}
      </label>
      <span className="flex items-center gap-1">
        <TextInput
          id={id}
          inputMode={decimals ? 'decimal' : 'numeric'}
          autoComplete="off"
          aria-invalid={outside || undefined}
          aria-describedby={outside ? errorId : undefined}
          value={shown}
          onChange={(event) => {
            setText(event.target.value);
            const next = read(event.target.value);
            if (next !== value) onChange(next);
          }}
        />
        {unit}
      </span>
      {outside ? (
        <FieldError id={errorId}>
          A number from {least} to {most}.
        </FieldError>
      ) : null}
    </div>
  );
}
