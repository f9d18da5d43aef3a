'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import type { Turns } from '@/lib/finder/adjusters';
import { ScrewDrawing } from './screw-drawing';
import { mostTurnsShown, quarter, screwFacts, screwWords, turnsInWords } from './screw-facts';

const screws = ['Side screw', 'Rear screw'] as const;
const atFirst: Turns = [0, 0];
const within = (turns: number) => Math.max(-mostTurnsShown, Math.min(mostTurnsShown, turns));

/** Two screws to turn by quarters: bring the dot onto the tip of the spire. */
export function ScrewFigure() {
  const [turns, setTurns] = useState<Turns>(atFirst);
  const words = screwWords(turns);
  const turn = (screw: 0 | 1, by: number) =>
    setTurns(([side, rear]) =>
      screw === 0 ? [within(side + by), rear] : [side, within(rear + by)],
    );
  return (
    <div>
      <ScrewDrawing dot={screwFacts(turns).dot} label={words} />
      <p role="status" className="mt-2">
        {words}
      </p>
      <div className="no-print mt-3 flex flex-wrap gap-x-6 gap-y-3">
        {([0, 1] as const).map((screw) => (
          <fieldset key={screw} className="min-w-0">
            <legend className="text-sm font-semibold">
              {screws[screw]}: <span className="font-normal">{turnsInWords(turns[screw])}</span>
            </legend>
            <div className="mt-1 flex gap-2">
              <Button onClick={() => turn(screw, -quarter)}>¼ turn left</Button>
              <Button onClick={() => turn(screw, quarter)}>¼ turn right</Button>
            </div>
          </fieldset>
        ))}
        <Button className="self-end" onClick={() => setTurns(atFirst)}>
          Start again
        </Button>
      </div>
    </div>
  );
}
