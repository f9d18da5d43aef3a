import { degreesToRadians, radiansToDegrees } from '../units/angle';
import { torqueNm, type ClampedTube } from './torque';

/** Altitudes that a night asks for, degrees, both within 0–90. */
export type AltitudeRange = { lowDeg: number; highDeg: number };

export type WorstTorque = {
  /** Where in the range it is greatest, either way. */
  altitudeDeg: number;
  /** With its sign: positive pulls the front down. */
  torqueNm: number;
};

/**
 * Where in the range the weight pulls hardest, and how hard. The torque is a cosine of the altitude,
 * so it is at an end of the range or at its one extremum, where tan a = −above/forward.
 */
export function worstTorque(tube: ClampedTube, { lowDeg, highDeg }: AltitudeRange): WorstTorque {
  const extremumDeg = radiansToDegrees(Math.atan(-tube.aboveMm / tube.forwardMm));
  return [lowDeg, highDeg, extremumDeg]
    .filter((altitudeDeg) => altitudeDeg >= lowDeg && altitudeDeg <= highDeg)
    .map((altitudeDeg) => ({ altitudeDeg, torqueNm: torqueNm(tube, altitudeDeg) }))
    .reduce((worst, next) => (Math.abs(next.torqueNm) > Math.abs(worst.torqueNm) ? next : worst));
}

/**
 * How far forward of the axis the centre of mass should lie so that the greatest torque over the
 * range is the least possible, millimetres: above · tan(middle of the range). There the torque is
 * nothing in the middle and equally large, the two ways, at both ends. Our derivation: with
 * forward = above tan m the torque is M g above sin(m − a) / cos m, and any other place makes one end worse.
 */
export function bestForwardMm(aboveMm: number, { lowDeg, highDeg }: AltitudeRange): number {
  return aboveMm * Math.tan(degreesToRadians((lowDeg + highDeg) / 2));
}
