'use client';

import { Button } from '@/components/ui/button';
import type { PutItTogetherDraft } from '@/lib/grading/bench/put-it-together/put-it-together-submission';
import type { PutItTogetherVariant } from '@/lib/variants/bench/put-it-together/put-it-together-variant';
import type { BenchViewProps } from '../bench/bench-parts';
import { harmInWords, standNow } from './stand-words';
import { stepName } from './step-words';

type StepCardsProps = Pick<
  BenchViewProps<PutItTogetherVariant, PutItTogetherDraft>,
  'variant' | 'draft' | 'change'
>;

/** What lies ready to be done; what has been done is gone from here. */
export function StepCards({ variant, draft, change }: StepCardsProps) {
  const open = variant.cards.filter((step) => !draft.order.includes(step));
  return (
    <section aria-labelledby="ready-heading" className="space-y-2">
      <h2 id="ready-heading" className="text-sm font-semibold">
        Ready on the bench
      </h2>
      {open.length === 0 ? <p className="text-sm text-soft">Nothing is left.</p> : null}
      <ul className="flex flex-wrap gap-2">
        {open.map((step) => (
          <li key={step}>
            <Button
              onClick={() => {
                const next = { ...draft, order: [...draft.order, step] };
                change(next, `${stepName[step]}: done.${harmInWords(standNow(variant, next))}`);
              }}
            >
              {stepName[step]}
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** The steps done so far, in order; each can be taken out again. */
export function StepsDone({ variant, draft, change }: StepCardsProps) {
  const { done } = variant;
  return (
    <section aria-labelledby="done-heading" className="space-y-2">
      <h2 id="done-heading" className="text-sm font-semibold">
        Done, in this order
      </h2>
      {done.length + draft.order.length === 0 ? (
        <p className="text-sm text-soft">Nothing yet.</p>
      ) : null}
      <ol className="list-decimal space-y-1 ps-6 text-sm">
        {done.map((step) => (
          <li key={step}>
            {stepName[step]} <span className="text-soft">(before you came)</span>
          </li>
        ))}
        {draft.order.map((step) => (
          <li key={step}>
            <span className="flex items-baseline justify-between gap-2">
              {stepName[step]}
              <Button
                variant="plain"
                aria-label={`Take back: ${stepName[step]}`}
                onClick={() => {
                  const order = draft.order.filter((one) => one !== step);
                  change({ ...draft, order }, `${stepName[step]}: taken back.`);
                }}
              >
                Take back
              </Button>
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
}
