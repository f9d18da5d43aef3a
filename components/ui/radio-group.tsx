import { useId, type ReactNode } from 'react';
import { classNames } from './class-names';
import { choiceLook } from './checkbox';
import { FieldError } from './field';

export type RadioOption<V extends string = string> = {
  value: V;
  label: ReactNode;
  hint?: ReactNode;
  disabled?: boolean;
};

type RadioGroupProps<V extends string> = {
  legend: ReactNode;
  hint?: ReactNode;
  error?: string | null;
  name: string;
  options: readonly RadioOption<V>[];
  /** For a form that keeps its own state. */
  defaultValue?: V;
  /** With onValueChange, for a page that keeps the state. */
  value?: V;
  onValueChange?: (value: V) => void;
  /** Beside each other where there is room; for short labels. */
  inline?: boolean;
  /** The legend stays for screen readers only. */
  legendHidden?: boolean;
};

export function RadioGroup<V extends string>({
  legend,
  hint,
  error,
  name,
  options,
  defaultValue,
  value,
  onValueChange,
  inline = false,
  legendHidden = false,
}: RadioGroupProps<V>) {
  const groupId = useId();
  const errorId = `${groupId}-error`;
  const hasError = error !== undefined && error !== null && error !== '';
  return (
    <fieldset
      aria-describedby={hasError ? errorId : undefined}
      className="flex min-w-0 flex-col gap-1"
    >
      <legend className={legendHidden ? 'sr-only' : 'mb-1 font-semibold'}>{legend}</legend>
      {hint === undefined ? null : <p className="max-w-measure text-sm text-soft">{hint}</p>}
      <div className={inline ? 'flex flex-wrap gap-x-6 gap-y-1' : 'flex flex-col gap-1.5'}>
        {options.map((option) => {
          const id = `${groupId}-${option.value}`;
          const state =
            value === undefined
              ? { defaultChecked: option.value === defaultValue }
              : { checked: option.value === value };
          return (
            <div key={option.value} className="flex min-h-(--target-small) items-start gap-2.5">
              <input
                {...state}
                id={id}
                type="radio"
                name={name}
                value={option.value}
                disabled={option.disabled}
                aria-describedby={option.hint === undefined ? undefined : `${id}-hint`}
                onChange={
                  onValueChange === undefined
                    ? undefined
                    : () => {
                        onValueChange(option.value);
                      }
                }
                className={classNames(choiceLook, 'radio-dot rounded-full')}
              />
              <div>
                <label htmlFor={id}>{option.label}</label>
                {option.hint === undefined ? null : (
                  <p id={`${id}-hint`} className="max-w-measure text-sm text-soft">
                    {option.hint}
                  </p>
                )}
              </div>
            </div>
          );
        })}
      </div>
      {hasError ? <FieldError id={errorId}>{error}</FieldError> : null}
    </fieldset>
  );
}
