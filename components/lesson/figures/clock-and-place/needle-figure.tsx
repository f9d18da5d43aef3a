'use client';

import { useId, useState } from 'react';
import { Select } from '@/components/ui/select';
import { DegreeControl } from '../degree-control';
import { NeedleDrawing } from './needle-drawing';
import { needlePlaces } from './needle-places';
import { needleWords } from './needle-words';
import { startingPlace } from './starts';

/** A needle in eight places, and a tube to be laid along true north by it. */
export function NeedleFigure() {
  const [placeName, setPlaceName] = useState<string>(startingPlace);
  const [bearingDeg, setBearing] = useState(0);
  const placeId = useId();
  const place = needlePlaces.find(({ name }) => name === placeName) ?? needlePlaces[0];
  const words = needleWords(place, bearingDeg);
  return (
    <div className="grid gap-x-8 gap-y-4 md:grid-cols-[minmax(0,3fr)_minmax(0,2fr)]">
      <div>
        <NeedleDrawing {...{ bearingDeg, declinationDeg: place.declinationDeg }} label={words} />
        <p role="status" className="mt-2">
          {words}
        </p>
      </div>
      <div className="no-print flex flex-col gap-3">
        <div>
          <label htmlFor={placeId} className="text-sm font-semibold">
            Place
          </label>
          <Select
            id={placeId}
            value={placeName}
            onChange={(event) => setPlaceName(event.target.value)}
          >
            {needlePlaces.map(({ name }) => (
              <option key={name}>{name}</option>
            ))}
          </Select>
        </div>
        <DegreeControl
          label="The tube’s bearing by the compass"
          value={bearingDeg}
          min={0}
          max={359}
          onChange={setBearing}
        />
      </div>
    </div>
  );
}
