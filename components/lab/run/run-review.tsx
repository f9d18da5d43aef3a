'use client';

import type { ReactNode } from 'react';
import { useEffect, useRef } from 'react';
import { Button } from '@/components/ui/button';
import type { RunModel } from './run-model';
import { minutesInWords, outcomeInWords } from './run-words';
import { useRunSnapshot } from './use-run-lab';

type RunReviewProps = {
  model: RunModel;
  mode: 'practice' | 'check';
  trust: boolean;
  /** Left out once the run has ended: then nothing can be changed. */
  onBack?: () => void;
  children: ReactNode;
};

/** What will be sent, in words, before it is sent. */
export function RunReview({ model, mode, trust, onBack, children }: RunReviewProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
  }, []);
  const { confirmed, outcome, minutes } = useRunSnapshot(model);
  const { computer } = model.variant.scenario.telescope;
  return (
    <section aria-labelledby="review-heading" className="space-y-3">
      <h3
        ref={heading}
        tabIndex={-1}
        id="review-heading"
        className="font-semibold focus-visible:outline-none"
      >
        {mode === 'check' ? 'Read it once more before you submit' : 'Your run'}
      </h3>
      <ul className="list-disc space-y-1 ps-5">
        {confirmed.map(({ hip }) => (
          <li key={hip}>You centred a star and said: this is {model.nameOf(hip)}.</li>
        ))}
        {outcome === null ? null : <li>{outcomeInWords(outcome, computer).title}.</li>}
        <li>
          {trust
            ? 'You would observe with this alignment.'
            : 'You would not observe with this alignment.'}
        </li>
        <li>It took {minutesInWords(minutes)}.</li>
      </ul>
      {children}
      {onBack === undefined ? null : (
        <Button className="w-full" onClick={onBack}>
          Go back
        </Button>
      )}
    </section>
  );
}
