'use client';

import { useId, useState } from 'react';
import { Select } from '@/components/ui/select';
import type { FigureData } from '../figure-data';
import { ViewDrawing } from './view-drawing';
import { viewFacts, viewInWords, viewTargets } from './view-facts';

/** A telescope, an eyepiece and a target to choose, and what is then in the ring. */
export function ViewFigure({ kits }: FigureData) {
  const [kitId, setKit] = useState(kits[0]?.id ?? '');
  const [eyepieceId, setEyepiece] = useState(kits[0]?.eyepieces[0]?.id ?? '');
  const [targetId, setTarget] = useState(viewTargets[0]?.id ?? '');
  const kit = kits.find(({ id }) => id === kitId);
  const eyepiece = kit?.eyepieces.find(({ id }) => id === eyepieceId);
  const target = viewTargets.find(({ id }) => id === targetId);
  if (kit === undefined || eyepiece === undefined || target === undefined) return null;
  const facts = viewFacts(kit, eyepiece, target);
  const words = viewInWords(kit, eyepiece, target, facts);
  return (
    <div className="grid gap-x-8 gap-y-4 md:grid-cols-[minmax(0,3fr)_minmax(0,2fr)]">
      <div>
        <ViewDrawing
          target={target}
          fieldArcmin={facts.fieldArcmin}
          label={`${facts.verdict} ${words}`}
        />
        <p role="status" className="mt-2">
          <strong className="font-semibold">{facts.verdict}</strong> {words}
        </p>
      </div>
      <div className="no-print flex flex-col gap-3">
        <Choice label="Telescope" value={kitId} onChange={setKit} of={kits} />
        <Choice
          label="Eyepiece"
          value={eyepieceId}
          onChange={setEyepiece}
          of={kit.eyepieces.map((one) => ({
            id: one.id,
            name: `${String(one.focalLengthMm)} mm`,
          }))}
        />
        <Choice label="What to look at" value={targetId} onChange={setTarget} of={viewTargets} />
      </div>
    </div>
  );
}

type ChoiceProps = {
  label: string;
  value: string;
  onChange: (id: string) => void;
  of: readonly { id: string; name: string }[];
};

function Choice({ label, value, onChange, of }: ChoiceProps) {
  const id = useId();
  return (
    <div>
      <label htmlFor={id} className="text-sm font-semibold">
        {label}
      </label>
      <Select id={id} value={value} onChange={(event) => onChange(event.target.value)}>
        {of.map((one) => (
          <option key={one.id} value={one.id}>
            {one.name}
          </option>
        ))}
      </Select>
    </div>
  );
}
