import type { MountTruth } from '../pointing/achieved-errors';
import { aboutAxis, aboutZ, multiply, transpose, type Matrix3 } from '../units/matrix';
import { degreesToRadians } from '../units/angle';
import type { RunSetup } from './setup';

/** Where the learner set the tube: true azimuth, and the altitude they took it to have. */
export type StartPosition = { azimuthDeg: number; altitudeDeg: number };

/**
 * A plane that rises by `tiltDeg` towards an azimuth: turns what stood on a level plane into what
 * stands on this one, in the local frame.
 */
export function tilt(tiltDeg: number, risesTowardsDeg: number): Matrix3 {
  const towards = degreesToRadians(risesTowardsDeg);
  // Across the slope, so that by the right-hand rule what lies towards the azimuth goes up.
  return aboutAxis([Math.cos(towards), -Math.sin(towards), 0], tiltDeg);
}

/** Local sky → a base that faces north on the ground of this evening. */
export const standOf = ({ base }: RunSetup): Matrix3 =>
  transpose(tilt(base.tiltDeg, base.risesTowardsDeg));

/**
 * How the mount stands once its readings are set to zero at a start position: its azimuth reads 0
 * where the tube faced, and its altitude reads 0 where the tube was, which the index makes wrong by
 * the zero of the set-up. (A cone error turns the tube by itself beside the zero of the azimuth.)
 */
export function truthAtStart(
  stand: Matrix3,
  start: StartPosition,
  errors: MountTruth['errors'],
): MountTruth {
  return {
    // Against the count of azimuth: what lies at the start azimuth comes to read 0.
    base: multiply(aboutZ(start.azimuthDeg), stand),
    errors: { ...errors, altitudeZeroDeg: start.altitudeDeg + errors.altitudeZeroDeg },
  };
}
