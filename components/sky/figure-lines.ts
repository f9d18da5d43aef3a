import { degreesToRadians } from '@/lib/units/angle';
import type { StarCatalogue } from '@/lib/sky/catalogue';
import type { SkyFrame } from '@/lib/sky/sky-frame';
import { placeCatalogue } from '@/lib/sky/star-places';
import type { SkyLight } from './sky-lights';
import { scenePoint, skyRadius } from './to-scene';

/** Lines stop this far before the stars, which stay free to be seen. */
const gapDeg = 0.9;

/**
 * Ends of the figures' lines, two points of three coordinates each. A line is drawn only between
 * stars that show: one that led to nothing, or into the ground, would be taken for a fault.
 */
export function figureLines(
  catalogue: StarCatalogue,
  frame: SkyFrame,
  lights: readonly Pick<SkyLight, 'star'>[],
): number[] {
  const places = placeCatalogue(catalogue, frame);
  const shown = new Set(lights.flatMap(({ star }) => star?.components ?? []));
  const pointOf = (star: number | undefined) => {
    if (star === undefined || !shown.has(catalogue.stars[star]?.hip ?? 0)) return null;
    const azimuth = places.azimuthDeg[star];
    const altitude = places.altitudeDeg[star];
    return azimuth === undefined || altitude === undefined ? null : scenePoint(azimuth, altitude);
  };
  const ends: number[] = [];
  for (const line of catalogue.figures.flatMap(({ lines }) => lines)) {
    for (let i = 1; i < line.length; i += 1) {
      const from = pointOf(line[i - 1]);
      const to = pointOf(line[i]);
      if (from === null || to === null) continue;
      const span = Math.hypot(from[0] - to[0], from[1] - to[1], from[2] - to[2]);
      const gap = (skyRadius * degreesToRadians(gapDeg)) / span;
      if (gap > 0.4) continue;
      for (const share of [gap, 1 - gap])
        for (const axis of [0, 1, 2] as const)
          ends.push(from[axis] + (to[axis] - from[axis]) * share);
    }
  }
  return ends;
}
