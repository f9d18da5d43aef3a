import { degreesToRadians, radiansToDegrees, wrap360 } from '../units/angle';
import type { Vector3 } from '../units/vector';
import type { MountErrors, Readings } from './pointing-model';

/**
 * Where the optical axis of an alt-azimuth mount points, as a unit vector in the mount's own frame
 * (x east, y north, z up for a base that stands level and faces north). The axis, skewed by the cone
 * error against the altitude axis, is turned about x by the altitude and its zero, about y by the
 * skew of the altitude axis, and about z clockwise by the azimuth. Any errors, not only small ones.
 *
 * Source: the classical alt-azimuth model without its small-angle steps (Wallace 2002, Proc. SPIE 4848).
 */
export function mountDirection(readings: Readings, errors: MountErrors): Vector3 {
  const altitude = degreesToRadians(readings.altitudeDeg + errors.altitudeZeroDeg);
  const cone = degreesToRadians(errors.coneDeg);
  const skew = degreesToRadians(errors.axisSkewDeg);
  const azimuth = degreesToRadians(readings.azimuthDeg);

  const across = Math.sin(cone);
  const along = Math.cos(cone) * Math.cos(altitude);
  const lifted = Math.cos(cone) * Math.sin(altitude);
  const x = across * Math.cos(skew) + lifted * Math.sin(skew);
  const z = lifted * Math.cos(skew) - across * Math.sin(skew);
  return [
    x * Math.cos(azimuth) + along * Math.sin(azimuth),
    along * Math.cos(azimuth) - x * Math.sin(azimuth),
    z,
  ];
}

// What rounding alone can make of nought in a difference of squares of numbers up to one; in
// angle it is under 0.01″ on the edge of the reach.
const roundingOfSquares = 1e-15;

/**
 * The readings at which the optical axis points along a unit vector of the mount's frame: exact
 * inverse of {@link mountDirection} for the tube this side of the pole (altitude with its zero within
 * ±90°). Azimuth in [0°, 360°); at the pole of a faultless mount every azimuth will do and 0° is given.
 * Null where the axis cannot be turned to: within |cone ± skew| or so of the mount's pole.
 */
export function readingsOf(direction: Vector3, errors: MountErrors): Readings | null {
  const cone = degreesToRadians(errors.coneDeg);
  const skew = degreesToRadians(errors.axisSkewDeg);
  const across = Math.sin(cone);
  // Turning in azimuth leaves z alone, so that z gives the altitude …
  const lifted = (direction[2] + across * Math.sin(skew)) / Math.cos(skew);
  const x = across * Math.cos(skew) + lifted * Math.sin(skew);
  // … and its cosine follows from the level part, which keeps its digits close to the pole.
  const level = Math.hypot(direction[0], direction[1]);
  const alongSquared = (level - x) * (level + x);
  if (!(alongSquared >= -roundingOfSquares)) return null;
  const along = Math.sqrt(Math.max(0, alongSquared));
  const altitudeDeg = radiansToDegrees(Math.atan2(lifted, along)) - errors.altitudeZeroDeg;
  const azimuth = Math.atan2(direction[0], direction[1]) - Math.atan2(x, along);
  return { azimuthDeg: wrap360(radiansToDegrees(azimuth)), altitudeDeg };
}
