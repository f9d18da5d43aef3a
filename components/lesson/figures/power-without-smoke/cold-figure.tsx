'use client';

import { useId, useState } from 'react';
import { Select } from '@/components/ui/select';
import { degreesText } from '@/lib/drawings/label-words';
import { kindNames } from '@/lib/drawings/row-of-cells';
import { cellKinds } from '@/lib/power/cell';
import { NumberControl } from '../level-enough/number-control';
import { coldNight, coldShapes, coldWords, startingCold } from './cold-facts';
import { Drawn } from './drawn';

/** Kind, cold and slewing, and what they do to hours and volts. */
export function ColdFigure() {
  const [night, setNight] = useState(startingCold);
  const id = useId();
  const ahead = coldNight(night);
  const words = coldWords(night, ahead);
  return (
    <div>
      <Drawn width={320} height={160} shapes={coldShapes(ahead)} label={words} />
      <p role="status" className="mt-2">
        {words}
      </p>
      <div className="no-print mt-3 grid gap-x-8 gap-y-2 sm:grid-cols-2">
        <div>
          <label htmlFor={id} className="text-sm font-semibold">
            Eight fresh cells of this kind
          </label>
          <Select
            id={id}
            value={night.kind}
            onChange={(event) => {
              const kind = cellKinds.find((one) => one === event.target.value);
              if (kind !== undefined) setNight({ ...night, kind });
            }}
          >
            {cellKinds.map((kind) => (
              <option key={kind} value={kind}>
                {kindNames[kind]}
              </option>
            ))}
          </Select>
        </div>
        <NumberControl
          label="How cold it is"
          value={night.temperatureC}
          min={-20}
          max={20}
          step={1}
          text={degreesText(night.temperatureC)}
          onChange={(temperatureC) => setNight({ ...night, temperatureC })}
        />
        <NumberControl
          label="Slewing in each hour"
          value={night.slewingMinutes}
          min={0}
          max={30}
          step={1}
          text={`${String(night.slewingMinutes)} minutes`}
          onChange={(slewingMinutes) => setNight({ ...night, slewingMinutes })}
        />
      </div>
    </div>
  );
}
