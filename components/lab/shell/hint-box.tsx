'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';

type HintBoxProps = {
  hints: readonly string[];
  /** Changes with each step of the task: the hints then start afresh. */
  step: string | number;
};

/** Hints, one at a time, each telling more. */
export function HintBox({ hints, step }: HintBoxProps) {
  const [open, setOpen] = useState({ step, count: 0 });
  const count = open.step === step ? open.count : 0;
  return (
    <section aria-label="Hints" className="space-y-2">
      <ol aria-live="polite" className="list-decimal space-y-2 ps-5 text-sm empty:hidden">
        {hints.slice(0, count).map((hint) => (
          <li key={hint}>{hint}</li>
        ))}
      </ol>
      {count < hints.length ? (
        <Button
          variant="plain"
          onClick={() => {
            setOpen({ step, count: count + 1 });
          }}
        >
          {count === 0 ? 'Show a hint' : 'Show another hint'}
        </Button>
      ) : null}
    </section>
  );
}
