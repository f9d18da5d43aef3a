import { degreesToRadians } from '../units/angle';

/** About how thick a finger is, millimetres. Common practice, no source. */
export const fingerMm = 16;

/**
 * The room between two of three legs, so far along them from the joint: feet stand 120° apart, so it is
 * √3 s sin β for legs at β from the vertical (geometry).
 */
export const gapMm = (alongMm: number, splayDeg: number): number =>
  Math.sqrt(3) * alongMm * Math.sin(degreesToRadians(splayDeg));

/** How far from the joint the legs are too close for a finger: it is caught anywhere above. */
export const caughtUpToMm = (splayDeg: number): number =>
  splayDeg <= 0 ? Infinity : fingerMm / (Math.sqrt(3) * Math.sin(degreesToRadians(splayDeg)));

/**
 * What a push at the foot becomes at something between the legs near their joint: the leg is a lever,
 * push × length = squeeze × distance (any first-year statics text). Newtons.
 */
export const squeezeN = (pushN: number, legLengthMm: number, fromJointMm: number): number =>
  (pushN * legLengthMm) / fromJointMm;
