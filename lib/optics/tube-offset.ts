import { radiansToArcminutes } from '../units/angle';
import { cross, dot, type Vector3 } from '../units/vector';
import type { FieldOffset } from './image-orientation';

/**
 * Where a target lies beside the tube's axis, in the tube's own frame, as somebody looking along the
 * tube sees it: on the plane that touches the sky at the axis (standard coordinates, Green 1985,
 * *Spherical Astronomy*, §13.2), its tangents told in arcminutes. One arcminute is an arcminute near
 * the axis; 1° off it reads 60.006′. Null for what is square to the axis or behind. All three are
 * unit vectors of one frame; `tubeUp` is square to `tube`.
 */
export function offsetFromTube(
  tube: Vector3,
  tubeUp: Vector3,
  target: Vector3,
): FieldOffset | null {
  const ahead = dot(tube, target);
  if (ahead <= 1e-9) return null;
  return {
    rightArcmin: radiansToArcminutes(dot(rightOf(tube, tubeUp), target) / ahead),
    upArcmin: radiansToArcminutes(dot(tubeUp, target) / ahead),
  };
}

/** Facing north with the zenith above, the right is east. */
const rightOf = (tube: Vector3, tubeUp: Vector3): Vector3 => cross(tube, tubeUp);
