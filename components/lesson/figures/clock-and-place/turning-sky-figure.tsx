'use client';

import { useId, useState } from 'react';
import { Button } from '@/components/ui/button';
import { Select } from '@/components/ui/select';
import { brightStars } from '@/lib/clock/bright-stars';
import { DegreeControl } from '../degree-control';
import { momentWords } from './moment-words';
import { startingLatitudeDeg, startingMs, startingStar } from './starts';
import { TurningSkyDrawing } from './turning-sky-drawing';

const hourMs = 3_600_000;

/** So many months on, at the same hour; a day that a month lacks runs on into the next one. */
function monthsOn(ms: number, months: number): number {
  const at = new Date(ms);
  at.setUTCMonth(at.getUTCMonth() + months);
  return at.getTime();
}

const followable = brightStars
  .filter(({ magnitude }) => magnitude <= 1.3)
  .map(({ name }) => name ?? '')
  .concat('Polaris')
  .sort();

/** A sky to be turned by hours, by months, and seen from elsewhere. */
export function TurningSkyFigure() {
  const [ms, setMs] = useState(startingMs);
  const [latitudeDeg, setLatitude] = useState(startingLatitudeDeg);
  const [starName, setStarName] = useState(startingStar);
  const starId = useId();
  const words = momentWords(ms, latitudeDeg, starName);
  return (
    <div>
      <TurningSkyDrawing {...{ ms, latitudeDeg, starName }} label={words} />
      <p role="status" className="mt-2">
        {words}
      </p>
      <div className="no-print mt-3 grid gap-x-8 gap-y-3 sm:grid-cols-2">
        <div className="flex flex-wrap content-start gap-2">
          <Button onClick={() => setMs(ms - hourMs)}>An hour back</Button>
          <Button onClick={() => setMs(ms + hourMs)}>An hour on</Button>
          <Button onClick={() => setMs(monthsOn(ms, -1))}>A month back</Button>
          <Button onClick={() => setMs(monthsOn(ms, 1))}>A month on</Button>
          <Button onClick={() => setMs(startingMs)}>As at first</Button>
        </div>
        <div>
          <label htmlFor={starId} className="text-sm font-semibold">
            Follow
          </label>
          <Select
            id={starId}
            value={starName}
            onChange={(event) => setStarName(event.target.value)}
          >
            {followable.map((name) => (
              <option key={name}>{name}</option>
            ))}
          </Select>
          <DegreeControl
            label="Your latitude (minus is south)"
            value={latitudeDeg}
            min={-66}
            max={66}
            onChange={setLatitude}
          />
        </div>
      </div>
    </div>
  );
}
