import { radiansToArcminutes } from '../units/angle';
import type { FieldOffset } from '../optics/image-orientation';

/**
 * A finder beside the tube that was set on something near crosses the tube's axis there; on the sky
 * the two differ by atan(b/D), arcminutes. `apartMm` from axis to axis, `distanceM` from the tube.
 */
export const dotResidualArcmin = ({
  apartMm,
  distanceM,
}: {
  apartMm: number;
  distanceM: number;
}): number => radiansToArcminutes(Math.atan(apartMm / 1000 / distanceM));

/**
 * Where the dot then points on the sky, beside the tube: beyond the crossing it lies on the other side.
 * The finder's place is told from behind the tube, in millimetres to the right and up.
 */
export function dotAtInfinity({
  finderRightMm,
  finderUpMm,
  distanceM,
}: {
  finderRightMm: number;
  finderUpMm: number;
  distanceM: number;
}): FieldOffset {
  return {
    rightArcmin: -dotResidualArcmin({ apartMm: finderRightMm, distanceM }),
    upArcmin: -dotResidualArcmin({ apartMm: finderUpMm, distanceM }),
  };
}
