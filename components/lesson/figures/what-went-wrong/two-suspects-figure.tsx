'use client';

import { useState } from 'react';
import { DegreeControl } from '../degree-control';
import { startingTest, testLandings } from './two-suspects-facts';
import { TwoSuspectsDrawing } from './two-suspects-drawing';
import { suspectsWords } from './two-suspects-words';

/** Choose the star for one test slew, and see how far the two suspects part there. */
export function TwoSuspectsFigure() {
  const [test, setTest] = useState(startingTest);
  const landings = testLandings(test);
  const words = suspectsWords(landings);
  return (
    <div className="grid gap-x-8 gap-y-4 md:grid-cols-[minmax(0,3fr)_minmax(0,2fr)]">
      <div>
        <TwoSuspectsDrawing test={test} landings={landings} label={words} />
        <p role="status" className="mt-2 min-h-[4.8em]">
          {words}
        </p>
      </div>
      <div className="no-print flex flex-col gap-3">
        <DegreeControl
          label="Test star: azimuth"
          value={test.azimuthDeg}
          min={0}
          max={359}
          onChange={(azimuthDeg) => setTest({ ...test, azimuthDeg })}
        />
        <DegreeControl
          label="Test star: altitude"
          value={test.altitudeDeg}
          min={20}
          max={75}
          onChange={(altitudeDeg) => setTest({ ...test, altitudeDeg })}
        />
      </div>
    </div>
  );
}
