'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import { NumberControl } from '../level-enough/number-control';
import { ShapePicture } from '../what-is-in-the-case/shape-picture';
import {
  narrowAndTallSetting,
  startingTriangle,
  triangleFacts,
  wideAndLowSetting,
  type TriangleSetting,
} from './triangle-facts';

const controls: readonly {
  is: keyof TriangleSetting;
  label: string;
  min: number;
  max: number;
  step: number;
  text: (value: number) => string;
}[] = [
  {
    is: 'legLengthMm',
    label: 'Length of the legs',
    min: 700,
    max: 1200,
    step: 50,
    text: (mm) => `${String(mm / 10)} cm`,
  },
  {
    is: 'splayDeg',
    label: 'Spread of each leg',
    min: 6,
    max: 26,
    step: 1,
    text: (deg) => `${String(deg)}° from upright`,
  },
  {
    is: 'armBearingDeg',
    label: 'The arm carries the tube towards',
    min: 0,
    max: 355,
    step: 5,
    text: (deg) => `${String(deg)}° from A, clockwise`,
  },
  {
    is: 'groundSlopeDeg',
    label: 'The ground falls towards B and C by',
    min: 0,
    max: 25,
    step: 1,
    text: (deg) => `${String(deg)}°`,
  },
];

/** The stand from above, to be spread, raised, turned and set on a slope. */
export function TriangleFigure() {
  const [setting, setSetting] = useState(startingTriangle);
  const { drawing, stands, words } = triangleFacts(setting);
  return (
    <div>
      <ShapePicture drawing={drawing} label={words} />
      <p role="status" className="mt-2">
        <strong className="font-semibold">{stands ? 'Stands.' : 'Tips over.'}</strong> {words}
      </p>
      <div className="no-print mt-3 grid gap-x-8 gap-y-2 sm:grid-cols-2">
        {controls.map(({ is, ...control }) => (
          <NumberControl
            key={is}
            {...control}
            text={control.text(setting[is])}
            value={setting[is]}
            onChange={(value) => setSetting({ ...setting, [is]: value })}
          />
        ))}
      </div>
      <div className="no-print mt-3 flex flex-wrap gap-2">
        <Button onClick={() => setSetting(wideAndLowSetting)}>Wide and low</Button>
        <Button onClick={() => setSetting(narrowAndTallSetting)}>Narrow, tall, on a slope</Button>
      </div>
    </div>
  );
}
