'use client';

import { useId, useState } from 'react';
import { Button } from '@/components/ui/button';
import { Select } from '@/components/ui/select';
import type { FigureData } from '../figure-data';
import { SightDrawing } from './sight-drawing';
import { sightDistances, sightFacts, sightWords, startingDistanceM } from './sight-facts';

/** What the finder was set on, nearer or farther, and where a star then stands under the dot. */
export function SightFigure({ kits }: FigureData) {
  const [place, setPlace] = useState(sightDistances.indexOf(startingDistanceM));
  const [kitId, setKit] = useState(kits[0]?.id ?? '');
  const [eyepieceId, setEyepiece] = useState(kits[0]?.eyepieces.at(-1)?.id ?? '');
  const ids = [useId(), useId()] as const;
  const kit = kits.find(({ id }) => id === kitId);
  const eyepiece = kit?.eyepieces.find(({ id }) => id === eyepieceId);
  const distanceM = sightDistances[place];
  if (kit === undefined || eyepiece === undefined || distanceM === undefined) return null;
  const facts = sightFacts(kit, eyepiece, distanceM);
  const words = sightWords(kit, eyepiece, distanceM);
  return (
    <div>
      <SightDrawing distanceM={distanceM} {...facts} label={words} />
      <p role="status" className="mt-2">
        {words}
      </p>
      <div className="no-print mt-3 flex flex-wrap items-end gap-3">
        <Button aria-disabled={place === 0} onClick={() => setPlace(Math.max(0, place - 1))}>
          Nearer
        </Button>
        <Button
          aria-disabled={place === sightDistances.length - 1}
          onClick={() => setPlace(Math.min(sightDistances.length - 1, place + 1))}
        >
          Farther
        </Button>
        <div>
          <label htmlFor={ids[0]} className="text-sm font-semibold">
            Telescope
          </label>
          <Select id={ids[0]} value={kitId} onChange={(event) => setKit(event.target.value)}>
            {kits.map((one) => (
              <option key={one.id} value={one.id}>
                {one.name}
              </option>
            ))}
          </Select>
        </div>
        <div>
          <label htmlFor={ids[1]} className="text-sm font-semibold">
            Eyepiece
          </label>
          <Select
            id={ids[1]}
            value={eyepieceId}
            onChange={(event) => setEyepiece(event.target.value)}
          >
            {kit.eyepieces.map((one) => (
              <option key={one.id} value={one.id}>
                {one.focalLengthMm} mm
              </option>
            ))}
          </Select>
        </div>
      </div>
    </div>
  );
}
