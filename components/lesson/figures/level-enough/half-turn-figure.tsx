'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import { HalfTurnDrawing } from './half-turn-drawing';
import { halfTurnWords, vials } from './half-turn-facts';
import { NumberControl } from './number-control';

/** A vial to turn on its arm, and a head to bring level while it tells only half the truth. */
export function HalfTurnFigure() {
  const [which, setWhich] = useState(0);
  const [turned, setTurned] = useState(false);
  const [seenBoth, setSeenBoth] = useState(false);
  const [leanDeg, setLean] = useState<number | null>(null);
  const vial = vials[which % vials.length];
  if (vial === undefined) return null;
  const one = { ...vial, leanDeg: leanDeg ?? vial.leanDeg };
  const words = halfTurnWords(one, turned, seenBoth);
  return (
    <div className="grid gap-x-8 gap-y-4 md:grid-cols-2">
      <HalfTurnDrawing
        one={one}
        turned={turned}
        seenBoth={seenBoth}
        label={`A vial from above, its mark towards the ${turned ? 'gate' : 'tree'}. ${words}`}
      />
      <div>
        <div className="no-print flex flex-col gap-3">
          <div className="flex flex-wrap gap-2">
            <Button
              variant="primary"
              onClick={() => {
                setTurned(!turned);
                setSeenBoth(true);
              }}
            >
              Turn the vial half round
            </Button>
            <Button
              onClick={() => {
                setWhich(which + 1);
                setTurned(false);
                setSeenBoth(false);
                setLean(null);
              }}
            >
              Another vial
            </Button>
          </div>
          {seenBoth ? (
            <NumberControl
              label="Tip the head with a leg"
              value={one.leanDeg}
              min={-3}
              max={3}
              step={0.1}
              text={tipText(one.leanDeg - vial.leanDeg)}
              onChange={setLean}
            />
          ) : null}
        </div>
        <p role="status" className="mt-3">
          {words}
        </p>
      </div>
    </div>
  );
}

const tipText = (byDeg: number): string =>
  Math.abs(byDeg) < 0.05
    ? 'as it was'
    : `${Math.abs(byDeg).toFixed(1)}° up towards the ${byDeg > 0 ? 'tree' : 'gate'}`;
