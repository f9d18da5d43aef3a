'use client';

import type { ReactNode } from 'react';
import { useEffect, useRef } from 'react';
import { Button } from '@/components/ui/button';
import { cureWords } from './cure-words';
import { lookWords } from './evidence/look-words';
import { faultWords } from './fault-words';
import type { FaultLabModel } from './use-fault-lab';

type FaultReviewProps = { lab: FaultLabModel; mode: 'practice' | 'check'; children: ReactNode };

/** What will be sent, in words, before it is sent. */
export function FaultReview({ lab, mode, children }: FaultReviewProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
  }, []);
  const { fault, cure } = lab.choice.draft;
  return (
    <section aria-labelledby="review-heading" className="space-y-4">
      <h3
        ref={heading}
        tabIndex={-1}
        id="review-heading"
        className="font-semibold focus-visible:outline-none"
      >
        {mode === 'check' ? 'Read it once more before you submit' : 'Your answer'}
      </h3>
      <dl className="space-y-3">
        {fault === null ? null : (
          <Answer
            asked="It was"
            answer={faultWords[fault].name}
            line={faultWords[fault].line}
            changeLabel="Change the fault"
            onChange={() => {
              lab.goTo('fault');
            }}
          />
        )}
        {cure === null ? null : (
          <Answer
            asked="The cure"
            answer={cureWords[cure].name}
            line={cureWords[cure].line}
            caution={cureWords[cure].caution}
            changeLabel="Change the cure"
            onChange={() => {
              lab.goTo('cure');
            }}
          />
        )}
      </dl>
      <p className="text-sm text-soft">{lookedInWords(lab)}</p>
      {children}
    </section>
  );
}

function lookedInWords({ choice, view }: FaultLabModel): string {
  const { looked, testSlew } = choice.draft;
  const slew = view.testSlews.find(({ hip }) => hip === testSlew);
  const asked = [
    ...looked.map((look) => lookWords[look].title.toLowerCase()),
    ...(slew === undefined ? [] : [`a test slew to ${slew.name}`]),
  ];
  return asked.length === 0
    ? 'You asked for nothing beyond what lay open.'
    : `You asked for: ${asked.join(', ')}.`;
}

type AnswerProps = {
  asked: string;
  answer: string;
  line: string;
  /** Where it would be met at the telescope. */
  caution?: string | undefined;
  changeLabel: string;
  onChange: () => void;
};

function Answer({ asked, answer, line, caution, changeLabel, onChange }: AnswerProps) {
  return (
    <div className="flex items-start justify-between gap-3 border-s-4 border-accent ps-3">
      <div>
        <dt className="text-sm text-soft">{asked}</dt>
        <dd>
          <span className="font-semibold">{answer}</span>
          <span className="block text-sm text-soft">{line}</span>
          {caution === undefined ? null : (
            <span className="mt-1 block text-sm">
              <strong className="font-semibold text-caution">With care:</strong> {caution}
            </span>
          )}
        </dd>
      </div>
      <Button variant="plain" aria-label={changeLabel} onClick={onChange}>
        Change
      </Button>
    </div>
  );
}
