'use client';

import { useState } from 'react';
import { DegreeControl } from '../degree-control';
import { NumberControl } from '../level-enough/number-control';
import { PullPicture } from './pull-picture';
import { startingAltitudeDeg, startingRaised } from './starts';
import { raisedWords } from './tube-words';

/** A tube to raise, with its weight in front of the axis or behind it, above it or below. */
export function PullFigure() {
  const [tube, setTube] = useState(startingRaised);
  const [altitudeDeg, setAltitude] = useState(startingAltitudeDeg);
  const words = raisedWords(tube, altitudeDeg);
  const side = (mm: number, plus: string, minus: string) =>
    mm === 0 ? 'at the axis' : `${String(Math.abs(mm))} mm ${mm > 0 ? plus : minus}`;
  return (
    <div className="flex flex-col gap-4">
      <PullPicture tube={tube} altitudeDeg={altitudeDeg} label={words} />
      <div className="no-print grid gap-x-8 gap-y-3 md:grid-cols-2">
        <DegreeControl
          label="Altitude of the tube"
          value={altitudeDeg}
          min={0}
          max={90}
          onChange={setAltitude}
        />
        <NumberControl
          label="Along the tube, its weight acts"
          value={tube.forwardMm}
          min={-25}
          max={25}
          step={1}
          text={side(tube.forwardMm, 'in front', 'behind')}
          onChange={(forwardMm) => setTube({ ...tube, forwardMm })}
        />
        <NumberControl
          label="Up or down, its weight acts"
          value={tube.aboveMm}
          min={-25}
          max={25}
          step={1}
          text={side(tube.aboveMm, 'above', 'below')}
          onChange={(aboveMm) => setTube({ ...tube, aboveMm })}
        />
      </div>
      <p role="status">{words}</p>
    </div>
  );
}
