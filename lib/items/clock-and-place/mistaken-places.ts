import { wrap360 } from '../../units/angle';
import { directionFromAzAlt, separationDeg } from '../../units/vector';
import type { MisconceptionId } from '../misconceptions';
import type { Position } from './drawn-sky';

/** How many times too large eyes make an altitude (design: learning design). */
export const altitudeLooks = 1.5;

type Mistaken = Position & { reason: string; misconception: MisconceptionId };

/** Where the usual slips lead from the right place, those that lead somewhere else and onto the sky. */
export function mistakenPlaces({ azimuthDeg, altitudeDeg }: Position): Mistaken[] {
  const mistaken: Mistaken[] = [
    {
      azimuthDeg: wrap360(azimuthDeg + 180),
      altitudeDeg,
      reason: 'That counts the azimuth from south. It starts at north.',
      misconception: 'azimuth-from-south',
    },
    {
      azimuthDeg: wrap360(-azimuthDeg),
      altitudeDeg,
      reason: 'That goes round the wrong way. From north, azimuth grows through east.',
      misconception: 'azimuth-anticlockwise',
    },
    {
      azimuthDeg,
      altitudeDeg: altitudeDeg * altitudeLooks,
      reason:
        'That is where it seems to be. Eyes make altitudes about one and a half times too large.',
      misconception: 'altitude-looks-higher',
    },
    {
      azimuthDeg: altitudeDeg,
      altitudeDeg: azimuthDeg,
      reason: 'The two are swapped. Altitude is how high, azimuth is which way.',
      misconception: 'altitude-azimuth-swapped',
    },
  ];
  return mistaken.filter(
    (one) => one.altitudeDeg <= 75 && apart(one, { azimuthDeg, altitudeDeg }) > 12,
  );
}

/** Along the great circle between the two, degrees. */
export const apart = (one: Position, other: Position): number =>
  separationDeg(
    directionFromAzAlt(one.azimuthDeg, one.altitudeDeg),
    directionFromAzAlt(other.azimuthDeg, other.altitudeDeg),
  );
