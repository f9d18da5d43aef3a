'use client';

import type { ReactNode } from 'react';
import { useEffect, useRef } from 'react';
import { Notice } from '@/components/ui/notice';

type LabOutcomeProps = {
  /** "Pick the pair: how it came out" */
  title: string;
  /** Null while the result is withheld. */
  result: ReactNode | null;
  late: boolean;
  withheldText: string | undefined;
  /** Where to go from here. */
  children: ReactNode;
};

/** What stands in a lab's place once the answer has been taken. */
export function LabOutcome({ title, result, late, withheldText, children }: LabOutcomeProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus();
    window.scrollTo(0, 0);
  }, []);
  return (
    <div className="mx-auto max-w-[76rem] space-y-6 px-4 py-8 sm:px-6">
      <h1 ref={heading} tabIndex={-1} className="text-3xl font-[560] focus-visible:outline-none">
        {result === null ? 'Your answer has arrived' : title}
      </h1>
      {late ? (
        <Notice tone="caution" title="It came after the due time">
          Your teacher sees when it arrived.
          {result === null
            ? ' What that takes off your mark will be named with the mark.'
            : ' The mark here is the one before any deduction for that. The deduction is named in My work, under “See how it came out”.'}
        </Notice>
      ) : null}
      {result === null ? (
        <p className="max-w-measure">
          {withheldText ?? 'Your teacher decides when the result is shown.'}
        </p>
      ) : (
        result
      )}
      {children === undefined ? null : <div className="flex flex-wrap gap-3">{children}</div>}
    </div>
  );
}
