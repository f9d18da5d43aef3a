import type { ReactNode } from 'react';

/** In the place of what is still being worked out: says so, and keeps the room that it will take. */
export function Reckoning({ children }: { children: ReactNode }) {
  return (
    <div className="min-h-64">
      <p role="status" className="text-soft">
        {children}
      </p>
      <div aria-hidden="true" className="mt-3 animate-pulse space-y-3">
        <div className="h-8 w-full max-w-[48rem] bg-sunken" />
        <div className="h-4 w-11/12 max-w-measure bg-sunken" />
        <div className="h-4 w-3/5 max-w-measure bg-sunken" />
      </div>
    </div>
  );
}
