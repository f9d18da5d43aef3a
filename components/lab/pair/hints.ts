import { directionFromAzAlt, separationDeg } from '@/lib/units/vector';
import { fistDeg } from '@/components/sky/position-words';
import type { PairLabSky } from './pair-lab-sky';

const fists = (angleDeg: number): string => {
  const count = Math.round((angleDeg / fistDeg) * 2) / 2;
  return `${count} ${count === 1 ? 'fist' : 'fists'}`;
};

type Place = { azimuthDeg: number; altitudeDeg: number };

/**
 * Three hints, each telling more than the one before. They speak of the scenario's own limits and
 * of what has been chosen, never of the answer.
 */
export function hintsFor(
  sky: Pick<PairLabSky, 'settings'>,
  kept: readonly Place[],
): readonly string[] {
  const { lowestAltitudeDeg, highestAltitudeDeg, horizonMarginDeg, moonDistanceDeg } = sky.settings;
  const band = `Look for bright stars between ${fists(lowestAltitudeDeg)} and ${fists(highestAltitudeDeg)} up: lower ones swim in thick air, higher ones are hard to turn to.`;
  const around = `Keep clear of the skyline by at least ${horizonMarginDeg}°, of the Moon by ${moonDistanceDeg}°, and of cloud. The star should be the brightest light in its part of the sky.`;
  const [first, second] = kept;
  if (first === undefined) {
    return [
      band,
      around,
      'Two stars fix the telescope best when they are far apart: think of a quarter of the sky, nine fists, and look in different directions.',
    ];
  }
  if (second === undefined) {
    return [
      'The second star should lie in quite another direction: not close to the first, not at the same azimuth, and not right opposite.',
      `From the first star, count six to twelve fists across the sky. ${band}`,
      around,
    ];
  }
  const apart = separationDeg(
    directionFromAzAlt(first.azimuthDeg, first.altitudeDeg),
    directionFromAzAlt(second.azimuthDeg, second.altitudeDeg),
  );
  return [
    `Your two stars are about ${fists(apart)} apart.`,
    'Look within one fist of each star: is there another light that is brighter, or almost as bright? That one could be taken for it.',
    'Planets count too: a light that does not twinkle can be brighter than any star near it.',
  ];
}
