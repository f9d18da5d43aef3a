'use client';

import { useId, useState } from 'react';
import { Button } from '@/components/ui/button';
import { Checkbox } from '@/components/ui/checkbox';
import { Select } from '@/components/ui/select';
import type { FigureData } from '../figure-data';
import { NumberControl } from '../level-enough/number-control';
import { ClampPicture } from './clamp-picture';
import { startingOffMm } from './starts';
import { barOf, looseParts, type LoosePart } from './tube-facts';
import { clampWords } from './tube-words';

const partNames: Readonly<Record<LoosePart, string>> = {
  'phone-adapter': 'A phone at the eyepiece',
  'dew-shield': 'A dew shield on the front',
};

/** A tube to slide in its clamp, and a hand to take away. */
export function ClampFigure({ kits }: FigureData) {
  const [kitId, setKitId] = useState(kits[0]?.id ?? '');
  const [offMm, setOff] = useState(startingOffMm);
  const [on, setOn] = useState<readonly LoosePart[]>([]);
  const [held, setHeld] = useState(true);
  const id = useId();
  const kit = kits.find((one) => one.id === kitId) ?? kits[0];
  if (kit === undefined) return null;
  const { leastMm, mostMm } = barOf(kit);
  const middleMm = (leastMm + mostMm) / 2;
  const clampMm = Math.max(leastMm, Math.min(mostMm, middleMm + offMm));
  const words = clampWords(kit, on, clampMm, held);
  return (
    <div className="flex flex-col gap-4">
      <ClampPicture kit={kit} on={on} clampMm={clampMm} held={held} label={words} />
      <div className="no-print grid gap-x-8 gap-y-3 md:grid-cols-2">
        <div>
          <label htmlFor={id} className="text-sm font-semibold">
            Telescope
          </label>
          <Select
            id={id}
            value={kit.id}
            onChange={(event) => {
              setKitId(event.target.value);
              setHeld(true);
            }}
          >
            {kits.map((one) => (
              <option key={one.id} value={one.id}>
                {one.name}
              </option>
            ))}
          </Select>
        </div>
        <NumberControl
          label="Where the clamp grips, from the front"
          value={clampMm}
          min={leastMm}
          max={mostMm}
          step={1}
          text={`${String(clampMm)} mm`}
          onChange={(mm) => {
            setOff(mm - middleMm);
            setHeld(true);
          }}
        />
        <div className="flex flex-col gap-1">
          {looseParts.map((part) => (
            <Checkbox
              key={part}
              label={partNames[part]}
              checked={on.includes(part)}
              onChange={(event) => {
                const without = on.filter((one) => one !== part);
                setOn(event.target.checked ? [...without, part] : without);
                setHeld(true);
              }}
            />
          ))}
        </div>
        <div>
          <Button variant="primary" onClick={() => setHeld(!held)}>
            {held ? 'Take the hand away' : 'Hold it level again'}
          </Button>
        </div>
      </div>
      <p role="status">{words}</p>
    </div>
  );
}
