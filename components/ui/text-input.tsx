import type { ComponentProps } from 'react';
import { classNames } from './class-names';
import { inputLook } from './input-look';

export function TextInput({ className, type = 'text', ...rest }: ComponentProps<'input'>) {
  return <input {...rest} type={type} className={classNames(inputLook, className)} />;
}

/** Several lines: a list of names, a note. */
export function TextArea({ className, rows = 4, ...rest }: ComponentProps<'textarea'>) {
  return (
    <textarea
      {...rest}
      rows={rows}
      className={classNames(inputLook, 'leading-normal', className)}
    />
  );
}
