import { degreesToRadians, radiansToDegrees, wrap180 } from '../units/angle';
import type { Vector3 } from '../units/vector';

/**
 * A direction by the circles it goes on every day. `hourAngleDeg` counts westward from the meridian,
 * [−180°, 180°), and grows by 15.041° an hour; the declination stays.
 */
export type HourCircle = { hourAngleDeg: number; declinationDeg: number };

/**
 * Hour angle and declination of a direction (unit vector east, north, up) seen from a latitude.
 * Meeus, *Astronomical Algorithms* 2nd ed., ch. 13, as a turn about the east–west line.
 */
export function hourCircleOf([east, north, up]: Vector3, latitudeDeg: number): HourCircle {
  const sin = Math.sin(degreesToRadians(latitudeDeg));
  const cos = Math.cos(degreesToRadians(latitudeDeg));
  // Along the equator's highest point, and along the pole.
  const equator = up * cos - north * sin;
  const pole = up * sin + north * cos;
  return {
    hourAngleDeg: wrap180(radiansToDegrees(Math.atan2(-east, equator))),
    declinationDeg: radiansToDegrees(Math.atan2(pole, Math.hypot(east, equator))),
  };
}

/** Inverse of {@link hourCircleOf}. */
export function directionOnHourCircle(
  { hourAngleDeg, declinationDeg }: HourCircle,
  latitudeDeg: number,
): Vector3 {
  const hourAngle = degreesToRadians(hourAngleDeg);
  const declination = degreesToRadians(declinationDeg);
  const sin = Math.sin(degreesToRadians(latitudeDeg));
  const cos = Math.cos(degreesToRadians(latitudeDeg));
  const equator = Math.cos(declination) * Math.cos(hourAngle);
  const pole = Math.sin(declination);
  return [
    -Math.cos(declination) * Math.sin(hourAngle),
    pole * cos - equator * sin,
    equator * cos + pole * sin,
  ];
}
