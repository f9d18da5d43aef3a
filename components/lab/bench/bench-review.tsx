'use client';

import type { ReactNode } from 'react';
import { useEffect, useRef } from 'react';
import { Button } from '@/components/ui/button';
import { AnswerLines } from './answer-lines';
import type { AnswerLine } from './bench-parts';

type BenchReviewProps = {
  mode: 'practice' | 'check';
  lines: readonly AnswerLine[];
  onBack: () => void;
  /** The button that sends, and how sending goes. */
  children: ReactNode;
};

/** What will be sent, in words, before it is sent (WCAG 2.2, 3.3.4). */
export function BenchReview({ mode, lines, onBack, children }: BenchReviewProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus();
  }, []);
  return (
    <section aria-labelledby="review-heading" className="space-y-4">
      <h3
        ref={heading}
        tabIndex={-1}
        id="review-heading"
        className="font-semibold focus-visible:outline-none"
      >
        {mode === 'check' ? 'Read it once more before you submit' : 'What you did'}
      </h3>
      <AnswerLines lines={lines} />
      {children}
      <Button className="w-full" onClick={onBack}>
        Back to the bench
      </Button>
    </section>
  );
}
