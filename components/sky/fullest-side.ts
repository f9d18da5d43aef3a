import { wrap180 } from '@/lib/units/angle';
import { signpostDirections } from './directions';
import type { SkyLight } from './sky-lights';

/** About what one looks at without turning the head far, and what a wide picture shows. */
const lowestDeg = 15;
const highestDeg = 60;
const halfWidthDeg = 35;
/** What the table calls bright. */
const faintestBright = 2.25;

/** How high the sky faces at first: low enough for the horizon and its signposts to be read as ground. */
export const firstLookAltitudeDeg = 18;

/**
 * The azimuth, of the eight with a signpost, towards which most bright lights show: a good place to
 * begin looking. Lights are counted and nothing else, so that it tells nothing about which of them
 * would serve. Of equals, the first from north through east.
 */
export function fullestSideDeg(
  lights: readonly Pick<SkyLight, 'azimuthDeg' | 'altitudeDeg' | 'seenAs'>[],
): number {
  const bright = lights.filter(
    ({ altitudeDeg, seenAs }) =>
      seenAs <= faintestBright && altitudeDeg >= lowestDeg && altitudeDeg <= highestDeg,
  );
  let fullest = { azimuthDeg: 0, count: -1 };
  for (const { azimuthDeg } of signpostDirections) {
    const count = bright.filter(
      (light) => Math.abs(wrap180(light.azimuthDeg - azimuthDeg)) <= halfWidthDeg,
    ).length;
    if (count > fullest.count) fullest = { azimuthDeg, count };
  }
  return fullest.azimuthDeg;
}
