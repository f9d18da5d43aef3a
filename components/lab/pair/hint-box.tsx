'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import { hintsFor } from './hints';
import type { PairLabModel } from './use-pair-lab';

/** Hints, one at a time, each telling more. They start afresh with each star. */
export function HintBox({ lab, levels }: { lab: PairLabModel; levels: number }) {
  const { picks } = lab.choice.draft;
  const places = picks.flatMap((pick) => {
    const place = lab.placeOf(`hip-${pick.hip}`);
    return place === null ? [] : [place];
  });
  const hints = hintsFor(lab.sky, places).slice(0, levels);
  const [open, setOpen] = useState({ for: picks.length, count: 0 });
  const count = open.for === picks.length ? open.count : 0;
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
            setOpen({ for: picks.length, count: count + 1 });
          }}
        >
          {count === 0 ? 'Show a hint' : 'Show another hint'}
        </Button>
      ) : null}
    </section>
  );
}
