'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import type { FieldOffset } from '@/lib/optics/image-orientation';
import type { FigureData } from '../figure-data';
import { WayRoundDrawing } from './way-round-drawing';
import { stepArcmin, wayRoundFacts, wayRoundWords } from './way-round-facts';

const moves = [
  { title: 'Tube left', rightArcmin: -stepArcmin, upArcmin: 0 },
  { title: 'Tube right', rightArcmin: stepArcmin, upArcmin: 0 },
  { title: 'Tube up', rightArcmin: 0, upArcmin: stepArcmin },
  { title: 'Tube down', rightArcmin: 0, upArcmin: -stepArcmin },
] as const;
const atFirst: FieldOffset = { rightArcmin: 0, upArcmin: 0 };
/** The star stays within what is drawn. */
const within = (value: number) => Math.max(-30, Math.min(105, value));

/** Three telescopes and a tube to move: bring the star to the middle. */
export function WayRoundFigure({ kits }: FigureData) {
  const [kitId, setKit] = useState(kits[0]?.id ?? '');
  const [tube, setTube] = useState(atFirst);
  const kit = kits.find(({ id }) => id === kitId);
  if (kit === undefined) return null;
  const { onSky, orientation } = wayRoundFacts(kit, tube);
  const words = wayRoundWords(kit, tube);
  return (
    <div>
      <WayRoundDrawing onSky={onSky} orientation={orientation} label={words} />
      <p role="status" className="mt-2">
        {words}
      </p>
      <div className="no-print mt-3 flex flex-wrap gap-2" role="group" aria-label="Telescope">
        {kits.map((one) => (
          <Button key={one.id} aria-pressed={one.id === kitId} onClick={() => setKit(one.id)}>
            {one.id === kitId ? '✓ ' : ''}
            {one.name}
          </Button>
        ))}
      </div>
      <div className="no-print mt-2 flex flex-wrap gap-2" role="group" aria-label="Move the tube">
        {moves.map(({ title, rightArcmin, upArcmin }) => (
          <Button
            key={title}
            onClick={() =>
              setTube((before) => ({
                rightArcmin: within(before.rightArcmin + rightArcmin),
                upArcmin: within(before.upArcmin + upArcmin),
              }))
            }
          >
            {title}
          </Button>
        ))}
        <Button onClick={() => setTube(atFirst)}>Start again</Button>
      </div>
    </div>
  );
}
