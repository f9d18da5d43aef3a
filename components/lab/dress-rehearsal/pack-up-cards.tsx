'use client';

import { useEffect, useRef } from 'react';
import { Button } from '@/components/ui/button';
import { packUpSteps, type PackUpStep } from '@/lib/rehearsal/pack-up';
import type { Evening } from './evening';
import { packUpName } from './pack-up-words';

// Not in the order in which they are done: by name.
const byName: readonly PackUpStep[] = [...packUpSteps].sort((a, b) =>
  packUpName(a).localeCompare(packUpName(b), 'en'),
);

/** What is still to be put away; each thing is gone from here once it is done. */
export function PackUpCards({ evening: { draft, work } }: { evening: Evening }) {
  const list = useRef<HTMLUListElement>(null);
  const pressed = useRef<number | null>(null);
  useEffect(() => {
    // The card that was pressed is gone, and with it the focus: it goes to the one that took its place.
    if (pressed.current === null || document.activeElement !== document.body) return;
    const cards = list.current?.querySelectorAll('button') ?? [];
    cards[Math.min(pressed.current, cards.length - 1)]?.focus({ preventScroll: true });
  }, [draft.packedUp.length]);
  const open = byName.filter((step) => !draft.packedUp.includes(step));
  return (
    <section aria-labelledby="pack-heading" className="space-y-2">
      <h2 id="pack-heading" className="text-sm font-semibold">
        Still to be put away
      </h2>
      {open.length === 0 ? <p className="text-sm text-soft">Nothing is left.</p> : null}
      <ul ref={list} className="flex flex-wrap gap-2">
        {open.map((step, index) => (
          <li key={step}>
            <Button
              onClick={() => {
                pressed.current = index;
                const packedUp = [...draft.packedUp, step];
                work('pack-up', { packedUp }, `${packUpName(step)}: done.`);
              }}
            >
              {packUpName(step)}
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}
