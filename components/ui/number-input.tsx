import type { ComponentProps } from 'react';
import { classNames } from './class-names';
import { inputLook } from './input-look';

type NumberInputProps = Omit<ComponentProps<'input'>, 'type'> & {
  /** Shown inside the field's end; say it in the label or hint too when it is not obvious. */
  unit?: string;
};

/** A number with tabular figures. Any step unless told, so that no value is refused for its decimals. */
export function NumberInput({ unit, className, step = 'any', ...rest }: NumberInputProps) {
  return (
    <span className={classNames('relative inline-flex w-full max-w-48', className)}>
      <input
        {...rest}
        type="number"
        step={step}
        className={classNames(inputLook, 'font-figures', unit !== undefined && 'pe-14')}
      />
      {unit === undefined ? null : (
        <span
          aria-hidden="true"
          className="pointer-events-none absolute inset-y-0 end-0 flex items-center pe-3 text-sm text-soft"
        >
          {unit}
        </span>
      )}
    </span>
  );
}
