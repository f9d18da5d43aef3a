import type { Sighting } from '@/lib/pointing/fit-on-two';
import { readingsOf } from '@/lib/pointing/mount';
import type { MountErrors } from '@/lib/pointing/pointing-model';
import type { StarPosition } from '@/lib/pointing/star-position';
import { degreesToRadians } from '@/lib/units/angle';
import { aboutX, aboutY, aboutZ, multiply, transform, type Matrix3 } from '@/lib/units/matrix';
import { directionFromAzAlt, normalise } from '@/lib/units/vector';

/** Stands off level by `rollDeg` and `pitchDeg` and faces `azimuthDeg` beside north. */
export const standing = (rollDeg: number, pitchDeg: number, azimuthDeg: number): Matrix3 =>
  multiply(multiply(aboutX(rollDeg), aboutY(pitchDeg)), aboutZ(azimuthDeg));

/** What the axes read with the tube beside a direction by so much, and what star is believed there. */
export function sighting({
  base,
  errors,
  at,
  believed = at,
  rightDeg = 0,
  upDeg = 0,
}: {
  base: Matrix3;
  errors: MountErrors;
  /** Where the star under the crosshair stands. */
  at: StarPosition;
  /** Where the star stands that the computer takes it for. */
  believed?: StarPosition;
  rightDeg?: number;
  upDeg?: number;
}): Sighting {
  const u = directionFromAzAlt(at.azimuthDeg, at.altitudeDeg);
  const right = directionFromAzAlt(at.azimuthDeg + 90, 0);
  const up = directionFromAzAlt(at.azimuthDeg, at.altitudeDeg + 90);
  const moved = (i: 0 | 1 | 2) =>
    u[i] + degreesToRadians(rightDeg) * right[i] + degreesToRadians(upDeg) * up[i];
  const readings = readingsOf(transform(base, normalise([moved(0), moved(1), moved(2)])), errors);
  if (readings === null) throw new RangeError('the mount cannot point there');
  return { sky: directionFromAzAlt(believed.azimuthDeg, believed.altitudeDeg), readings };
}
