'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import { Meter } from '@/components/ui/meter';
import type { FigureData } from '../figure-data';
import { NumberControl } from '../level-enough/number-control';
import { lightFacts, startingLight, tubeOfKit } from './light-facts';
import { ShapePicture } from './shape-picture';

/** One star's light through any of the telescopes, with a card to hold before the front. */
export function LightFigure({ kits }: FigureData) {
  const [kitId, setKitId] = useState(kits[0]?.id ?? '');
  const [setting, setSetting] = useState(startingLight);
  const kit = kits.find(({ id }) => id === kitId) ?? kits[0];
  if (kit === undefined) return null;
  const facts = lightFacts(tubeOfKit(kit), setting);
  const { coveredPercent, aboveArcmin } = setting;
  const besides = `${String(Math.abs(aboveArcmin))}′ ${aboveArcmin < 0 ? 'below' : 'above'}`;
  return (
    <div>
      <div className="no-print mb-3 flex flex-wrap gap-2" role="group" aria-label="Telescope">
        {kits.map(({ id, name }) => (
          <Button
            key={id}
            aria-pressed={id === kit.id}
            variant={id === kit.id ? 'primary' : 'quiet'}
            onClick={() => setKitId(id)}
          >
            {name}
          </Button>
        ))}
      </div>
      <ShapePicture drawing={facts.drawing} label={facts.words} />
      <Meter
        value={facts.percentLeft}
        label="Light that is left"
        valueText={`${String(Math.round(facts.percentLeft))}%`}
      />
      <p role="status" className="mt-2">
        {facts.words}
      </p>
      <div className="no-print mt-3 grid gap-x-8 gap-y-2 sm:grid-cols-2">
        <NumberControl
          label="A card from above covers"
          value={coveredPercent}
          min={0}
          max={100}
          step={5}
          text={`${String(coveredPercent)}% of the width`}
          onChange={(value) => setSetting({ ...setting, coveredPercent: value })}
        />
        <NumberControl
          label="The star stands"
          value={aboveArcmin}
          min={-30}
          max={30}
          step={5}
          text={aboveArcmin === 0 ? 'in the middle' : besides}
          onChange={(value) => setSetting({ ...setting, aboveArcmin: value })}
        />
      </div>
    </div>
  );
}
