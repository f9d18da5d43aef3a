import type { ComponentProps } from 'react';
import { ChevronDown } from 'lucide-react';
import { classNames } from './class-names';
import { inputLook } from './input-look';

/** The browser's own list, so that it works by every means the device has. */
export function Select({ className, children, ...rest }: ComponentProps<'select'>) {
  return (
    <span className={classNames('relative inline-flex w-full', className)}>
      <select {...rest} className={classNames(inputLook, 'appearance-none pe-10')}>
        {children}
      </select>
      <ChevronDown
        aria-hidden="true"
        className="pointer-events-none absolute inset-y-0 end-3 my-auto size-5 text-soft"
      />
    </span>
  );
}
