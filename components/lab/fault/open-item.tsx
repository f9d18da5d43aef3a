'use client';

import type { ReactNode } from 'react';
import { useEffect, useId, useRef } from 'react';
import { classNames } from '@/components/ui/class-names';

type OpenItemProps = {
  title: string;
  /** How it came to lie here, where it did not from the start. */
  note: string | null;
  /** Just opened: the focus goes on here, since the button it was on is gone. */
  focused: boolean;
  /** Over the whole bench: several drawings side by side. */
  wide?: boolean;
  children: ReactNode;
};

/** A sheet that lies open on the bench. */
export function OpenItem({ title, note, focused, wide = false, children }: OpenItemProps) {
  const id = useId();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    // Unless the learner has gone on to something else while it was on its way.
    if (focused && document.activeElement === document.body) heading.current?.focus();
  }, [focused]);
  return (
    <section
      aria-labelledby={id}
      className={classNames(
        'rounded-b-lg border border-t-2 border-line border-t-strong bg-panel p-4 sm:p-5',
        wide && 'xl:col-span-2',
      )}
    >
      <div className="mb-3 flex flex-wrap items-baseline justify-between gap-x-4">
        <h2
          ref={heading}
          id={id}
          tabIndex={-1}
          className="scroll-m-20 text-lg font-semibold focus-visible:outline-none"
        >
          {title}
        </h2>
        {note === null ? null : <span className="text-sm text-soft">{note}</span>}
      </div>
      {children}
    </section>
  );
}
