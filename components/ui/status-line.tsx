import type { ReactNode } from 'react';
import { classNames } from './class-names';

/**
 * What is going on, read out when there is a pause (4.1.3). Keep it mounted and change its text:
 * a line that appears together with its text is not announced.
 */
export function StatusLine({ children, className }: { children?: ReactNode; className?: string }) {
  return (
    <p
      role="status"
      aria-live="polite"
      className={classNames('min-h-[1.6em] text-sm text-soft', className)}
    >
      {children}
    </p>
  );
}
