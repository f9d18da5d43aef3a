'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import type { FigureData } from '../figure-data';
import { bestLegWords, headWords, legLetters } from './bubble-words';
import { grounds, headFacts, mostChangeMm, type LegChanges } from './head-facts';
import { LegsDrawing } from './legs-drawing';
import { NumberControl } from './number-control';

const untouched: LegChanges = [0, 0, 0];

/** Three legs to let out and take in, and the bubble that answers. */
export function LegsFigure({ kits }: FigureData) {
  const [which, setWhich] = useState(0);
  const [changes, setChanges] = useState<LegChanges>(untouched);
  const [hint, setHint] = useState(false);
  const ground = grounds[which % grounds.length];
  const kit = kits[0];
  if (kit === undefined || ground === undefined) return null;
  const facts = headFacts(ground, kit.bench.tripod, changes);
  const words = headWords(facts);
  const startOn = (next: number) => {
    setWhich(next);
    setChanges(untouched);
    setHint(false);
  };
  return (
    <div className="grid gap-x-8 gap-y-4 md:grid-cols-2">
      <LegsDrawing
        facts={facts}
        changes={changes}
        hinted={hint && !facts.level ? facts.best.leg : null}
        label={`From above, leg A at 12 o’clock, B at 4, C at 8. ${words}`}
      />
      <div>
        <div className="no-print flex flex-col gap-2">
          {([0, 1, 2] as const).map((leg) => (
            <NumberControl
              key={leg}
              label={`Leg ${legLetters[leg]}`}
              value={changes[leg]}
              min={-mostChangeMm}
              max={mostChangeMm}
              step={1}
              text={changeText(changes[leg])}
              onChange={(mm) => {
                setHint(false);
                setChanges(([a, b, c]) => [
                  leg === 0 ? mm : a,
                  leg === 1 ? mm : b,
                  leg === 2 ? mm : c,
                ]);
              }}
            />
          ))}
          <div className="mt-1 flex flex-wrap gap-2">
            <Button onClick={() => setHint(true)}>Which leg does most?</Button>
            <Button onClick={() => startOn(which)}>Start again</Button>
            <Button onClick={() => startOn(which + 1)}>Other ground</Button>
          </div>
        </div>
        <p role="status" className="mt-3">
          {words} {hint ? bestLegWords(facts) : ''}
        </p>
      </div>
    </div>
  );
}

const changeText = (mm: number): string =>
  mm === 0 ? 'as it was' : `${String(Math.abs(mm))} mm ${mm > 0 ? 'out' : 'in'}`;
