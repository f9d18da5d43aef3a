import { degreesToRadians, radiansToDegrees } from '../units/angle';
import type { MutableVector3, Vector3 } from '../units/vector';
import { refractionDeg } from './refraction';

/** Lifts a true direction to where it is seen. `scale` as in a frame. Writes into `into`. */
export function refracted(
  direction: Vector3,
  scale: number,
  into: MutableVector3 = [0, 0, 0],
): MutableVector3 {
  return lifted(direction, refractionDeg(altitudeOf(direction), scale), into);
}

/** Inverse of {@link refracted}, to 10⁻⁹ degree from 1° below the horizon up. */
export function unrefracted(direction: Vector3, scale: number): Vector3 {
  const seenDeg = altitudeOf(direction);
  let trueDeg = seenDeg;
  // Refraction changes by less than a third of the change of altitude: every round wins half a digit.
  for (let round = 0; round < 40; round += 1) {
    const next = seenDeg - refractionDeg(trueDeg, scale);
    if (Math.abs(next - trueDeg) < 1e-12) break;
    trueDeg = next;
  }
  return lifted(direction, trueDeg - seenDeg, [0, 0, 0]);
}

const altitudeOf = (direction: Vector3): number =>
  radiansToDegrees(Math.atan2(direction[2], Math.hypot(direction[0], direction[1])));

/** Turned upward along its vertical circle. At the zenith there is none, and nothing to lift. */
function lifted([x, y, z]: Vector3, byDeg: number, into: MutableVector3): MutableVector3 {
  const by = degreesToRadians(byDeg);
  const level = Math.hypot(x, y);
  const stretch = level === 0 ? 1 : Math.cos(by) - (z / level) * Math.sin(by);
  into[0] = x * stretch;
  into[1] = y * stretch;
  into[2] = z * Math.cos(by) + level * Math.sin(by);
  return into;
}
