import { aboutZ, multiply, transpose, type Matrix3 } from '../units/matrix';
import type { MountTruth } from '../pointing/achieved-errors';
import type { AxesAt } from './motion';
import type { Disturbance } from './setup';
import { tilt } from './start-position';

/** What stands on the ground, and what its axes read. */
export type Standing = {
  /** Local sky → a base that faces north on this ground. */
  stand: Matrix3;
  truth: MountTruth;
  axes: AxesAt;
};

/** What a disturbance leaves behind. The tube jumps with it where it is moved by it. */
export function disturbed(before: Standing, disturbance: Disturbance): Standing {
  const { stand, truth, axes } = before;
  switch (disturbance.kind) {
    case 'base-moves':
      return onGroundTurned(before, tilt(disturbance.tiltDeg, disturbance.risesTowardsDeg));
    case 'base-turns':
      // Positive as azimuth counts, clockwise.
      return onGroundTurned(before, aboutZ(-disturbance.azimuthDeg));
    case 'axis-slips':
      return {
        stand,
        axes,
        truth: slipped(truth, disturbance.azimuthDeg, disturbance.altitudeDeg),
      };
    case 'computer-resets':
      // The tube stays and the readings become zero: as if both axes had slipped by what they read.
      return {
        stand,
        axes: { azimuthDeg: 0, altitudeDeg: 0, lag: axes.lag },
        truth: slipped(truth, axes.azimuthDeg, axes.altitudeDeg),
      };
  }
}

/** The whole stand is turned by a rotation of the local frame. */
function onGroundTurned({ stand, truth, axes }: Standing, turn: Matrix3): Standing {
  const back = transpose(turn);
  return {
    stand: multiply(stand, back),
    truth: { ...truth, base: multiply(truth.base, back) },
    axes,
  };
}

/** The tube has moved by this much while the readings stood: the base and the zero take it up. */
const slipped = (
  { base, errors }: MountTruth,
  azimuthDeg: number,
  altitudeDeg: number,
): MountTruth => ({
  base: multiply(aboutZ(azimuthDeg), base),
  errors: { ...errors, altitudeZeroDeg: errors.altitudeZeroDeg + altitudeDeg },
});
