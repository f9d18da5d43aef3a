import type { ReactNode } from 'react';
import { Mark } from './mark';

/** Nothing here yet: why, and the first step. */
export function EmptyState({
  title,
  children,
  action,
}: {
  title: ReactNode;
  children: ReactNode;
  action?: ReactNode;
}) {
  return (
    <div className="flex flex-col items-start gap-2 border-y border-dashed border-strong px-1 py-8 sm:px-4">
      <Mark className="h-6 w-auto text-soft" />
      <p className="text-lg font-semibold">{title}</p>
      <div className="max-w-measure space-y-2 text-soft">{children}</div>
      {action === undefined ? null : <div className="mt-2 flex flex-wrap gap-2">{action}</div>}
    </div>
  );
}
