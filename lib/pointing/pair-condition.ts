import { directionFromAzAlt, dot } from '../units/vector';
import { degreesToRadians } from '../units/angle';
import type { Telescope } from './scenario';
import { singularValues } from './singular-values';
import type { StarPosition } from './star-position';

/** What a small base rotation (and the altitude zero) does to the readings (cross-azimuth, altitude). */
export function sensitivityRows(
  computer: Telescope['computer'],
  { azimuthDeg, altitudeDeg }: StarPosition,
): [number[], number[]] {
  const azimuth = degreesToRadians(azimuthDeg);
  const altitude = degreesToRadians(altitudeDeg);
  const crossAzimuth = [
    Math.sin(altitude) * Math.sin(azimuth),
    Math.sin(altitude) * Math.cos(azimuth),
    -Math.cos(altitude),
  ];
  const inAltitude = [Math.cos(azimuth), -Math.sin(azimuth), 0];
  return computer === 'solved-zero'
    ? [
        [...crossAzimuth, 0],
        [...inAltitude, 1],
      ]
    : [crossAzimuth, inAltitude];
}

/**
 * Condition number of the stacked sensitivities of two stars, largest over smallest singular value;
 * Infinity when one of them vanishes. With a fixed zero it is √(2 / (1 − |cos θ|)) for stars θ apart.
 */
export function pairConditionNumber(
  computer: Telescope['computer'],
  star1: StarPosition,
  star2: StarPosition,
): number {
  if (computer === 'fixed-zero') {
    const u = directionFromAzAlt(star1.azimuthDeg, star1.altitudeDeg);
    const v = directionFromAzAlt(star2.azimuthDeg, star2.altitudeDeg);
    return Math.sqrt(2 / Math.max(0, 1 - Math.abs(dot(u, v))));
  }
  const { s } = singularValues([
    ...sensitivityRows(computer, star1),
    ...sensitivityRows(computer, star2),
  ]);
  return Math.max(...s) / Math.min(...s);
}
