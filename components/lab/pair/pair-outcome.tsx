'use client';

import dynamic from 'next/dynamic';
import type { ReactNode } from 'react';
import { useEffect, useRef } from 'react';
import { Notice } from '@/components/ui/notice';
import type { PairResult } from '@/lib/grading/pair-result';
import { skyPictureStars } from '@/components/sky/sky-picture-stars';
import type { StarCatalogue } from '@/lib/sky/catalogue';
import type { PairLabSky } from './pair-lab-sky';

const PairResultView = dynamic(() =>
  import('@/components/grading/pair-result-view').then((module) => module.PairResultView),
);

type PairOutcomeProps = {
  sky: PairLabSky;
  catalogue: StarCatalogue;
  result: PairResult | null;
  late: boolean;
  withheldText: string | undefined;
  children: ReactNode;
};

/** What stands in the lab's place once the answer has been taken. */
export function PairOutcome({
  sky,
  catalogue,
  result,
  late,
  withheldText,
  children,
}: PairOutcomeProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus();
    window.scrollTo(0, 0);
  }, []);
  return (
    <div className="mx-auto max-w-[76rem] space-y-6 px-4 py-8 sm:px-6">
      <h1 ref={heading} tabIndex={-1} className="text-3xl font-[560] focus-visible:outline-none">
        {result === null ? 'Your answer has arrived' : 'Pick the pair: how it came out'}
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
        <PairResultView result={result} sky={sky} stars={skyPictureStars(catalogue, sky.frame)} />
      )}
      {children === undefined ? null : <div className="flex flex-wrap gap-3">{children}</div>}
    </div>
  );
}
