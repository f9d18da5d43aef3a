import { directionFromAzAlt, separationDeg } from '@/lib/units/vector';
import { horizonAltitudeDeg } from '@/lib/sky/horizon';
import { nearestSignpost } from '@/components/sky/directions';
import { toHalfFists } from '@/components/sky/position-words';
import type { LabelledLight } from './light-labels';
import type { Place } from './pair-sky-places';

export type BrightnessFilter = 'first' | 'bright' | 'all';
/** A signpost's word, or every direction. */
export type DirectionFilter = string;

/** A neighbour is looked for within one fist; the list goes half a fist further. */
const neighbourhoodDeg = 15;

const gapDeg = (a: Place, b: Place): number =>
  separationDeg(
    directionFromAzAlt(a.azimuthDeg, a.altitudeDeg),
    directionFromAzAlt(b.azimuthDeg, b.altitudeDeg),
  );

export type TableRow = {
  light: LabelledLight;
  /** Half fists from the star whose neighbours are listed; null in the whole list. */
  fistsAway: number | null;
};

/** What a filter leaves, in order of direction; beside a star, its neighbours by distance. */
export function tableRows(
  lights: readonly LabelledLight[],
  filter: {
    brightness: BrightnessFilter;
    direction: DirectionFilter;
    near: { id: string; place: Place } | null;
  },
): TableRow[] {
  if (filter.near !== null) {
    const { id, place } = filter.near;
    return lights
      .filter((light) => light.id !== id)
      .map((light) => ({ light, away: gapDeg(light, place) }))
      .filter(({ away }) => away <= neighbourhoodDeg)
      .sort((a, b) => a.away - b.away)
      .map(({ light, away }) => ({ light, fistsAway: toHalfFists(away) }));
  }
  return lights
    .filter((light) => {
      if (light.listed === 'neighbour') return false;
      if (filter.brightness === 'first' && light.listed !== 'first') return false;
      if (filter.brightness === 'bright' && light.seenAs > 2.25) return false;
      return (
        filter.direction === 'all' || nearestSignpost(light.azimuthDeg).word === filter.direction
      );
    })
    .sort((a, b) => a.azimuthDeg - b.azimuthDeg)
    .map((light) => ({ light, fistsAway: null }));
}

/** What an eye notices about a light besides where it is and how bright. */
export function notesOf(
  light: LabelledLight,
  sky: { horizon: Parameters<typeof horizonAltitudeDeg>[0]; moon: Place },
): string[] {
  const notes: string[] = [];
  if (light.veiled) notes.push('in cloud');
  if (sky.moon.altitudeDeg > 0 && gapDeg(light, sky.moon) < 7.5) notes.push('close to the Moon');
  const skyline = horizonAltitudeDeg(sky.horizon, light.azimuthDeg);
  if (skyline > 0 && light.altitudeDeg - skyline < 3.5) notes.push('just above the skyline');
  return notes;
}
