'use client';

import { useEffect, useRef } from 'react';
import { Button } from '@/components/ui/button';
import type { PairLabModel } from './use-pair-lab';

type PairReviewProps = { lab: PairLabModel; mode: 'practice' | 'check' };

/** What will be sent, in words, before it is sent. */
export function PairReview({ lab, mode }: PairReviewProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
  }, []);
  const { stage, choice } = lab;
  return (
    <section aria-labelledby="review-heading" className="space-y-3">
      <h3
        ref={heading}
        tabIndex={-1}
        id="review-heading"
        className="font-semibold focus-visible:outline-none"
      >
        {mode === 'check' ? 'Read it once more before you submit' : 'Your answer'}
      </h3>
      {stage.at === 'none' ? (
        <>
          <p>You say: tonight, from here, no two stars would do.</p>
          <Button onClick={lab.unsayNone}>Go back to choosing</Button>
        </>
      ) : (
        <ul className="space-y-2">
          {choice.draft.picks.map((pick) => (
            <li key={pick.hip} className="flex items-start justify-between gap-3">
              <span>
                <span className="font-semibold">{lab.nameOf(`hip-${pick.hip}`)}</span>
                <span className="block text-sm text-soft">
                  {pick.lookAlike === null
                    ? 'Nothing near it could be mistaken for it.'
                    : `${lab.nameOf(pick.lookAlike)} could be mistaken for it.`}
                </span>
              </span>
              <Button
                variant="plain"
                aria-label={`Change what could be mistaken for ${lab.nameOf(`hip-${pick.hip}`)}`}
                onClick={() => {
                  lab.askAgain(pick.hip);
                }}
              >
                Change
              </Button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
