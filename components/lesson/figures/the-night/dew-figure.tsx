'use client';

import { useState } from 'react';
import { NumberControl } from '../level-enough/number-control';
import { Drawn } from '../power-without-smoke/drawn';
import { dewFacts, dewShapes, dewWords, startingDew } from './dew-facts';

/** Air, humidity and cold glass: when it mists. */
export function DewFigure() {
  const [dew, setDew] = useState(startingDew);
  const facts = dewFacts(dew);
  const words = dewWords(dew, facts);
  return (
    <div>
      <Drawn width={320} height={192} shapes={dewShapes(dew, facts)} label={words} />
      <p role="status" className="mt-2">
        {words}
      </p>
      <div className="no-print mt-3 grid gap-x-8 gap-y-2 sm:grid-cols-2">
        <NumberControl
          label="Temperature of the air"
          value={dew.airC}
          min={-4}
          max={25}
          step={1}
          text={`${String(dew.airC).replace('-', '−')} °C`}
          onChange={(airC) => setDew({ ...dew, airC })}
        />
        <NumberControl
          label="Humidity"
          value={dew.humidityPercent}
          min={40}
          max={100}
          step={1}
          text={`${String(dew.humidityPercent)} %`}
          onChange={(humidityPercent) => setDew({ ...dew, humidityPercent })}
        />
        <NumberControl
          label="Glass colder than the air by"
          value={dew.glassBelowAirC}
          min={0}
          max={6}
          step={1}
          text={`${String(dew.glassBelowAirC)} degrees`}
          onChange={(glassBelowAirC) => setDew({ ...dew, glassBelowAirC })}
        />
      </div>
    </div>
  );
}
