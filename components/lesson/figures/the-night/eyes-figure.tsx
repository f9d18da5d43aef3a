'use client';

import { useState } from 'react';
import { Checkbox } from '@/components/ui/checkbox';
import { NumberControl } from '../level-enough/number-control';
import { Drawn } from '../power-without-smoke/drawn';
import { eyesShapes, eyesWords, flashMinute, startingEyes } from './eyes-facts';

/** Minutes in the dark, with or without a white torch on the way. */
export function EyesFigure() {
  const [eyes, setEyes] = useState(startingEyes);
  const words = eyesWords(eyes);
  return (
    <div>
      <Drawn width={320} height={198} shapes={eyesShapes(eyes)} label={words} />
      <p role="status" className="mt-2">
        {words}
      </p>
      <div className="no-print mt-3 grid gap-x-8 gap-y-2 sm:grid-cols-2">
        <NumberControl
          label="Since you left a bright room"
          value={eyes.minute}
          min={0}
          max={40}
          step={1}
          text={`${String(eyes.minute)} minutes`}
          onChange={(minute) => setEyes({ ...eyes, minute })}
        />
        <Checkbox
          label={`A white torch shines at minute ${String(flashMinute)}`}
          checked={eyes.flash !== null}
          onChange={(event) =>
            setEyes({ ...eyes, flash: event.target.checked ? flashMinute : null })
          }
        />
      </div>
    </div>
  );
}
