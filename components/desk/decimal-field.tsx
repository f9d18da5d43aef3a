import { Field } from '@/components/ui/field';
import { TextInput } from '@/components/ui/text-input';

/**
 * A number typed as text: a decimal comma works everywhere and what was mistyped stays to be seen,
 * which a browser's own number field does not grant.
 */
export function DecimalField({
  id,
  label,
  unit,
  hint,
  error,
  value,
  wide = false,
  onChange,
}: {
  /** The field's path in the input, where an error summary leads to. */
  id: string;
  label: string;
  unit?: string;
  hint?: string;
  error?: string | null;
  value: string;
  wide?: boolean;
  onChange: (value: string) => void;
}) {
  return (
    <Field
      id={id}
      label={unit === undefined ? label : `${label} (${unit})`}
      hint={hint}
      error={error}
    >
      {(control) => (
        <TextInput
          {...control}
          inputMode="decimal"
          autoComplete="off"
          className={wide ? 'font-figures' : 'max-w-40 font-figures'}
          value={value}
          onChange={(event) => onChange(event.target.value)}
        />
      )}
    </Field>
  );
}
