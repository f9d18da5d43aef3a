import { siderealDegPerSecond } from '../sky/turned-frame';
import { degreesToRadians } from '../units/angle';

/**
 * Seconds that a star takes across the middle of a field while the telescope stands still, from its
 * declination; Infinity at a pole. Along the star's circle: good while the field is narrow against it.
 */
export function driftTimeSeconds(fieldArcmin: number, declinationDeg: number): number {
  const arcminPerSecond = 60 * siderealDegPerSecond * Math.cos(degreesToRadians(declinationDeg));
  return Math.abs(declinationDeg) >= 90 ? Infinity : fieldArcmin / arcminPerSecond;
}
