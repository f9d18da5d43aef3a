'use client';

import { useMemo, useState } from 'react';
import { DegreeControl } from '../degree-control';
import type { FigureData } from '../figure-data';
import { ChoiceControl } from './choice-control';
import { SpoiltDrawing } from './spoilt-drawing';
import { spoils, spoiltFacts, startingThird, type SpoilId } from './spoilt-facts';
import { behindIt, saidByMount } from './spoilt-words';

const computers = [
  { id: 'solved-zero', title: 'Works the zero out, as ours do' },
  { id: 'fixed-zero', title: 'Takes the zero as given' },
] as const;

/** Spoil the second star, and see what the mount says, what a third star shows, and what it costs. */
export function SpoiltFigure({ kits }: FigureData) {
  const [spoilId, setSpoil] = useState<SpoilId>('middle');
  const [computerId, setComputer] = useState<string>('solved-zero');
  const [third, setThird] = useState(startingThird);
  const radius = kits[0]?.fieldRadiusArcmin ?? 27;
  const computer = computers.find(({ id }) => id === computerId) ?? computers[0];
  const facts = useMemo(
    () => spoiltFacts({ computer: computer.id, fieldRadiusArcmin: radius }, spoilId, third),
    [computer, radius, spoilId, third],
  );
  const said = saidByMount(facts.outcome);
  const behind = behindIt(facts, radius);
  return (
    <div className="grid gap-x-8 gap-y-4 md:grid-cols-[minmax(0,3fr)_minmax(0,2fr)]">
      <div>
        <SpoiltDrawing
          facts={facts}
          third={third}
          fieldRadiusArcmin={radius}
          label={`${said} ${behind}`}
        />
        <p role="status" className="mt-2">
          <strong className="font-semibold">{said}</strong> {behind}
        </p>
      </div>
      <div className="no-print flex flex-col gap-3">
        <ChoiceControl
          label="The second star was"
          value={spoilId}
          options={spoils}
          onChange={(id) => setSpoil(spoils.find((one) => one.id === id)?.id ?? 'middle')}
        />
        <ChoiceControl
          label="The mount’s computer"
          value={computer.id}
          options={computers}
          onChange={setComputer}
        />
        <DegreeControl
          label="Third star: azimuth"
          value={third.azimuthDeg}
          min={0}
          max={359}
          onChange={(azimuthDeg) => setThird({ ...third, azimuthDeg })}
        />
        <DegreeControl
          label="Third star: altitude"
          value={third.altitudeDeg}
          min={20}
          max={79}
          onChange={(altitudeDeg) => setThird({ ...third, altitudeDeg })}
        />
      </div>
    </div>
  );
}
