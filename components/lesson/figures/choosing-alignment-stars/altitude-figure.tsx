'use client';

import { useState } from 'react';
import { AltitudeDrawing } from './altitude-drawing';
import { altitudeFacts } from './altitude-facts';
import { altitudeWords } from './altitude-words';
import { DegreeControl } from '../degree-control';
import { startingAltitudeDeg, startingLatitudeDeg } from './starts';

/** One star to move up and down, and what its altitude does to light and mount. */
export function AltitudeFigure() {
  const [altitudeDeg, setAltitude] = useState(startingAltitudeDeg);
  const [latitudeDeg, setLatitude] = useState(startingLatitudeDeg);
  const facts = altitudeFacts(altitudeDeg, latitudeDeg);
  const words = altitudeWords(altitudeDeg, facts);
  return (
    <div>
      <AltitudeDrawing altitudeDeg={altitudeDeg} facts={facts} label={words} />
      <p role="status" className="mt-2">
        {words}
      </p>
      <div className="no-print mt-3 grid gap-x-8 gap-y-2 sm:grid-cols-2">
        <DegreeControl
          label="Altitude of the star"
          value={altitudeDeg}
          min={0}
          max={89}
          onChange={setAltitude}
        />
        <DegreeControl
          label="Your latitude, north or south"
          value={latitudeDeg}
          min={0}
          max={90}
          onChange={setLatitude}
        />
      </div>
    </div>
  );
}
