'use client';

import { useId, useMemo, useState } from 'react';
import { Select } from '@/components/ui/select';
import { DegreeControl } from '../degree-control';
import type { FigureData } from '../figure-data';
import { LeanDrawing } from './lean-drawing';
import { leanFacts } from './lean-facts';
import { leanWords } from './lean-words';
import { NumberControl } from './number-control';
import { startingFromHighDeg, startingLeanDeg } from './starts';

/** A lean to make larger and smaller, and what three computers make of it at the eyepiece. */
export function LeanFigure({ kits }: FigureData) {
  const [tiltDeg, setTilt] = useState(startingLeanDeg);
  const [fromHighDeg, setFrom] = useState(startingFromHighDeg);
  const [kitId, setKitId] = useState(kits[0]?.id ?? '');
  const id = useId();
  const kit = kits.find((one) => one.id === kitId) ?? kits[0];
  const facts = useMemo(
    () => (kit === undefined ? null : leanFacts(kit, tiltDeg, fromHighDeg)),
    [kit, tiltDeg, fromHighDeg],
  );
  if (kit === undefined || facts === null) return null;
  const words = leanWords(kit.name, tiltDeg, facts);
  return (
    <div className="flex flex-col gap-4">
      <LeanDrawing facts={facts} label={words} />
      <div className="no-print grid gap-x-8 gap-y-3 md:grid-cols-2">
        <NumberControl
          label="Lean of the base"
          value={tiltDeg}
          min={0}
          max={6}
          step={0.1}
          text={`${tiltDeg.toFixed(1)} degrees`}
          onChange={setTilt}
        />
        <DegreeControl
          label="The star stands so far round from the high side"
          value={fromHighDeg}
          min={0}
          max={180}
          onChange={setFrom}
        />
        <div>
          <label htmlFor={id} className="text-sm font-semibold">
            Telescope, with its 25 mm eyepiece
          </label>
          <Select id={id} value={kit.id} onChange={(event) => setKitId(event.target.value)}>
            {kits.map((one) => (
              <option key={one.id} value={one.id}>
                {one.name}
              </option>
            ))}
          </Select>
        </div>
      </div>
      <p role="status">{words}</p>
    </div>
  );
}
