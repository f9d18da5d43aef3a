'use client';

import { useState } from 'react';
import { NumberControl } from '../level-enough/number-control';
import { Drawn } from '../power-without-smoke/drawn';
import { dayText, duskFacts, duskShapes, duskWords, startingDusk } from './dusk-facts';

/** A day and a latitude, and how the night goes there. */
export function DuskFigure() {
  const [dusk, setDusk] = useState(startingDusk);
  const facts = duskFacts(dusk);
  const words = duskWords(dusk, facts);
  const { latitudeDeg, dayOfYear } = dusk;
  return (
    <div>
      <Drawn width={320} height={152} shapes={duskShapes(facts)} label={words} />
      <p role="status" className="mt-2">
        {words}
      </p>
      <div className="no-print mt-3 grid gap-x-8 gap-y-2 sm:grid-cols-2">
        <NumberControl
          label="Latitude"
          value={latitudeDeg}
          min={-70}
          max={70}
          step={1}
          text={`${String(Math.abs(latitudeDeg))}° ${latitudeDeg < 0 ? 'south' : 'north'}`}
          onChange={(value) => setDusk({ ...dusk, latitudeDeg: value })}
        />
        <NumberControl
          label="Day of the year"
          value={dayOfYear}
          min={1}
          max={365}
          step={1}
          text={dayText(dayOfYear)}
          onChange={(value) => setDusk({ ...dusk, dayOfYear: value })}
        />
      </div>
    </div>
  );
}
