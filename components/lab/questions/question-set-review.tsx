'use client';

import { useEffect, useRef, type ReactNode } from 'react';
import { CircleAlert } from 'lucide-react';
import { answerState, type AnswerState } from '@/components/questions/answer-state';
import { Button } from '@/components/ui/button';
import { Notice } from '@/components/ui/notice';
import { answerInWords } from '@/lib/items/answer-in-words';
import type { ItemAnswer } from '@/lib/items/item-answer';
import type { QuestionSet } from '@/lib/items/question-set/question-set';

const saidOf: Readonly<Record<Exclude<AnswerState, 'answered'>, string>> = {
  none: 'Not answered',
  unfinished: 'Not finished: something has no partner yet',
  'not-a-number': 'Not a number in the unit shown: write figures only, such as 35 or 2.5',
};

/** All answers in words before they are sent (WCAG 2.2, 3.3.4), and what would count nothing. */
export function QuestionSetReview({
  questions,
  answers,
  mode,
  onGo,
  children,
}: {
  questions: QuestionSet['questions'];
  answers: readonly (ItemAnswer | null)[];
  mode: 'practice' | 'check';
  onGo: (to: number) => void;
  /** The button that sends, and how sending goes. */
  children: ReactNode;
}) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus();
  }, []);
  const lines = questions.map(({ face }, index) => {
    const answer = answers[index] ?? null;
    return { face, answer, state: answerState(face, answer) };
  });
  const open = lines.filter(({ state }) => state !== 'answered').length;
  return (
    <section aria-labelledby="review-heading" className="mt-2 space-y-4">
      <h2
        ref={heading}
        tabIndex={-1}
        id="review-heading"
        className="text-xl font-semibold focus-visible:outline-none"
      >
        {mode === 'check' ? 'Read it once more before you submit' : 'What you answered'}
      </h2>
      {open === 0 ? null : (
        <Notice
          tone="caution"
          title={
            open === 1 ? 'One question has no answer' : `${String(open)} questions have no answer`
          }
        >
          What is not answered counts nothing. A guess costs nothing either.
        </Notice>
      )}
      <ol className="space-y-3">
        {lines.map(({ face, answer, state }, index) => (
          <li
            key={index}
            className="flex flex-wrap items-start justify-between gap-x-4 gap-y-1 border-b border-line pb-3"
          >
            <div className="max-w-measure min-w-0">
              <p className="text-sm text-soft">
                {index + 1}. {face.prompt}
              </p>
              <p className="flex items-start gap-1.5 font-semibold">
                {state === 'answered' && answer !== null ? (
                  answerInWords(face, answer)
                ) : state === 'answered' ? null : (
                  <>
                    <CircleAlert
                      aria-hidden="true"
                      className="mt-[0.25em] size-[1.1em] shrink-0 text-caution"
                    />
                    {saidOf[state]}
                  </>
                )}
              </p>
            </div>
            <Button onClick={() => onGo(index)} aria-label={`Change question ${String(index + 1)}`}>
              Change
            </Button>
          </li>
        ))}
      </ol>
      {children}
    </section>
  );
}
