'use client';

import { useMemo, useState } from 'react';
import type { TubeAim } from '@/components/sky/tube-mark';
import { wrap360 } from '@/lib/units/angle';
import { directionFromAzAlt } from '@/lib/units/vector';

/** Where the tube happens to lie before anybody has touched it. */
const asItStands = { bearingDeg: 62, altitudeDeg: 11 };

export const lowestTubeDeg = -15;
export const highestTubeDeg = 40;

const rounded = (valueDeg: number, low: number, high: number): number =>
  Math.round(Math.min(high, Math.max(low, valueDeg)) * 10) / 10;

/** The tube with its clutches loose, as the learner turns and tips it. */
export type StartChoice = {
  /** Clockwise from the compass needle, [0°, 360°): what one can read off. */
  bearingDeg: number;
  /** Above level. */
  altitudeDeg: number;
  /** Clockwise from true north: what the run is told. */
  azimuthDeg: number;
  aim: TubeAim;
  turnTo: (bearingDeg: number) => void;
  tipTo: (altitudeDeg: number) => void;
};

/** `declinationDeg`: how far the needle points east of true north. */
export function useStartChoice(declinationDeg: number): StartChoice {
  const [place, setPlace] = useState(asItStands);
  return useMemo(() => {
    const azimuthDeg = wrap360(place.bearingDeg + declinationDeg);
    const direction = directionFromAzAlt(azimuthDeg, place.altitudeDeg);
    return {
      ...place,
      azimuthDeg,
      aim: { tube: direction, dot: direction },
      turnTo: (bearingDeg) => {
        setPlace((before) => ({
          ...before,
          bearingDeg: wrap360(Math.round(bearingDeg * 10) / 10),
        }));
      },
      tipTo: (altitudeDeg) => {
        setPlace((before) => ({
          ...before,
          altitudeDeg: rounded(altitudeDeg, lowestTubeDeg, highestTubeDeg),
        }));
      },
    };
  }, [place, declinationDeg]);
}
