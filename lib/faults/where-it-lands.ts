import { degreesToRadians } from '../units/angle';
import {
  azAltFromDirection,
  cross,
  directionFromAzAlt,
  dot,
  separationDeg,
  type Vector3,
} from '../units/vector';
import type { Landing } from './evidence';
import type { Target } from './faulty-evening';

/**
 * Where the tube points beside a target, as one sees it from the target: the great circle between the
 * two, in degrees, split along the horizon and upward, so that √(right² + up²) is the separation at
 * any distance. Unit vectors, east, north, up, refracted.
 */
export function landingBeside(target: Target, star: Vector3, tube: Vector3): Landing {
  const { hip, name } = target;
  const up = upAt(star);
  const right = cross(star, up);
  const sideways = dot(tube, right);
  const upward = dot(tube, up);
  const across = Math.hypot(sideways, upward);
  const apartDeg = separationDeg(star, tube);
  // On the target itself, and opposite to it, there is no direction.
  return across === 0
    ? { hip, name, rightDeg: 0, upDeg: apartDeg }
    : {
        hip,
        name,
        rightDeg: (apartDeg * sideways) / across,
        upDeg: (apartDeg * upward) / across,
      };
}

/** Square to a direction, toward the zenith; toward the south at the zenith. */
export function upAt(direction: Vector3): Vector3 {
  const { azimuthDeg, altitudeDeg } = azAltFromDirection(direction);
  return directionFromAzAlt(azimuthDeg + 180, 90 - altitudeDeg);
}

/** The direction that lies so many arcminutes beside another one, as {@link landingBeside} tells it. */
export function directionBeside(
  direction: Vector3,
  { rightArcmin, upArcmin }: { rightArcmin: number; upArcmin: number },
): Vector3 {
  const up = upAt(direction);
  const right = cross(direction, up);
  const apartArcmin = Math.hypot(rightArcmin, upArcmin);
  if (apartArcmin === 0) return direction;
  const apart = degreesToRadians(apartArcmin / 60);
  const along = Math.sin(apart) / apartArcmin;
  const component = (i: 0 | 1 | 2): number =>
    Math.cos(apart) * direction[i] + along * (rightArcmin * right[i] + upArcmin * up[i]);
  return [component(0), component(1), component(2)];
}
