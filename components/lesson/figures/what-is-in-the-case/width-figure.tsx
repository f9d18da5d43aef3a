'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import type { FigureData } from '../figure-data';
import { NumberControl } from '../level-enough/number-control';
import { ShapePicture } from './shape-picture';
import { startingWidthMm, widthFacts } from './width-facts';

/** A front to make wider, and what that is worth in light. */
export function WidthFigure({ kits }: FigureData) {
  const [widthMm, setWidth] = useState(startingWidthMm);
  const { drawing, words } = widthFacts(widthMm, kits);
  return (
    <div>
      <ShapePicture drawing={drawing} label={words} />
      <p role="status" className="mt-2">
        {words}
      </p>
      <div className="no-print mt-3 grid gap-2">
        <NumberControl
          label="Width of the front"
          value={widthMm}
          min={7}
          max={150}
          step={1}
          text={`${String(widthMm)} mm`}
          onChange={setWidth}
        />
        <div className="flex flex-wrap gap-2">
          {kits.map(({ id, name, telescope }) => (
            <Button key={id} onClick={() => setWidth(telescope.apertureMm)}>
              As wide as {name}
            </Button>
          ))}
        </div>
      </div>
    </div>
  );
}
