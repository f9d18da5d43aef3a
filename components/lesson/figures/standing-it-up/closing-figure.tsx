'use client';

import { useState } from 'react';
import { NumberControl } from '../level-enough/number-control';
import { ShapePicture } from '../what-is-in-the-case/shape-picture';
import { closingFacts, startingClosing } from './closing-facts';

/** Legs to fold, and a finger to keep out of them. */
export function ClosingFigure() {
  const [setting, setSetting] = useState(startingClosing);
  const { drawing, words } = closingFacts(setting);
  return (
    <div>
      <ShapePicture drawing={drawing} label={words} />
      <p role="status" className="mt-2">
        {words}
      </p>
      <div className="no-print mt-3 grid gap-x-8 gap-y-2 sm:grid-cols-2">
        <NumberControl
          label="Fold the legs"
          value={setting.splayDeg}
          min={1}
          max={26}
          step={1}
          text={`${String(setting.splayDeg)}° from upright`}
          onChange={(splayDeg) => setSetting({ ...setting, splayDeg })}
        />
        <NumberControl
          label="The finger is"
          value={setting.fingerAtMm}
          min={20}
          max={600}
          step={10}
          text={`${String(setting.fingerAtMm)} mm from the joint`}
          onChange={(fingerAtMm) => setSetting({ ...setting, fingerAtMm })}
        />
      </div>
    </div>
  );
}
