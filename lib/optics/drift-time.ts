import { degreesToRadians } from '../units/angle';

/** How fast the sky turns about the pole, arcseconds per second of time. Meeus ch. 12. */
export const siderealArcsecPerSecond = 15.041;

/**
 * Seconds that a star takes across the middle of a field while the telescope stands still, from its
 * declination; Infinity at a pole. Along the star's circle: good while the field is narrow against it.
 */
export function driftTimeSeconds(fieldArcmin: number, declinationDeg: number): number {
  const speed = siderealArcsecPerSecond * Math.cos(degreesToRadians(declinationDeg));
  return Math.abs(declinationDeg) >= 90 ? Infinity : (fieldArcmin * 60) / speed;
}
