'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import { drawStand } from '@/lib/drawings/draw-stand';
import { packUpName } from '@/lib/drawings/pack-up-words';
import { packUpSteps, type PackUpStep } from '@/lib/rehearsal/pack-up';
import { Drawn } from '../power-without-smoke/drawn';
import { isOver, leadsOf, packingAtStart, packWords, standOf, takeStep } from './pack-facts';

/** The steps by their names: the order is not to be read off the page. */
const offered: readonly PackUpStep[] = [...packUpSteps].sort((a, b) =>
  packUpName(a).localeCompare(packUpName(b), 'en'),
);

/** A telescope to be packed up in any order, and what each step does. */
export function PackFigure() {
  const [packing, setPacking] = useState(packingAtStart);
  const { done } = packing;
  const words = packWords(packing);
  const over = isOver(done);
  return (
    <div>
      <Drawn {...drawStand(standOf(done), leadsOf(done))} label={words} />
      <p role="status" className="mt-2">
        {words}
      </p>
      <div className="no-print mt-3 grid grid-cols-2 gap-2">
        {offered.map((step) => (
          <Button
            key={step}
            aria-disabled={over || done.includes(step)}
            className="justify-start px-3 text-start text-sm aria-disabled:opacity-60"
            onClick={() => {
              if (!over && !done.includes(step)) setPacking(takeStep(packing, step));
            }}
          >
            {done.includes(step) ? `${String(done.indexOf(step) + 1)}. ` : ''}
            {packUpName(step)}
          </Button>
        ))}
        <Button onClick={() => setPacking({ done: done.slice(0, -1), refused: null })}>
          Take the last step back
        </Button>
        <Button onClick={() => setPacking(packingAtStart)}>Begin again</Button>
      </div>
    </div>
  );
}
