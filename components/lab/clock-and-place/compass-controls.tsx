'use client';

import { Button } from '@/components/ui/button';
import { wrap360 } from '@/lib/units/angle';
import type { ClockViewProps } from './clock-view';
import { NumberField } from './number-field';

const steps = [-10, -1, 1, 10] as const;

/** To a tenth of a degree, which no compass shows; so that steps stay on whole degrees. */
export const toBearing = (deg: number): number => wrap360(Math.round(deg * 10) / 10);

/** Where the tube starts, by the compass that stands on it. */
export function CompassControls({ draft, change }: Pick<ClockViewProps, 'draft' | 'change'>) {
  const { compassDeg } = draft;
  const set = (deg: number | null): void => {
    change(
      { ...draft, compassDeg: deg === null ? null : toBearing(deg) },
      deg === null ? '' : `The tube looks along ${String(toBearing(deg))}° on the compass.`,
    );
  };
  return (
    <fieldset className="space-y-2">
      <legend className="font-semibold">Start direction of the tube, on the compass</legend>
      <NumberField
        {...{ label: 'Bearing, 0 to 359.9', least: 0, most: 359.9, unit: '°', decimals: true }}
        className="w-36"
        value={compassDeg}
        onChange={set}
      />
      <div className="flex flex-wrap gap-2">
        {steps.map((step) => (
          <Button
            key={step}
            aria-label={`Turn the tube ${String(Math.abs(step))}° ${step < 0 ? 'left' : 'right'}`}
            onClick={() => {
              set((compassDeg ?? 0) + step);
            }}
          >
            {step < 0 ? '−' : '+'}
            {Math.abs(step)}
          </Button>
        ))}
      </div>
    </fieldset>
  );
}
