import { degreesToRadians, radiansToDegrees } from '../units/angle';
import { separationDeg, type Vector3 } from '../units/vector';
import { fitRotation } from './fit-rotation';
import { mountDirection } from './mount';
import type { PointingModel, Readings } from './pointing-model';
import type { Telescope } from './scenario';

/** A star where the computer believes it stands (refracted, local), and what the axes read on it. */
export type Sighting = { sky: Vector3; readings: Readings };

export type TwoStarFit = {
  model: PointingModel;
  /** Between the two stars less between the two readings, after the zero that was solved for. */
  mismatchArcmin: number;
};

/** The direction of readings on a mount whose only error is its altitude zero, degrees. */
export const believedDirection = (readings: Readings, altitudeZeroDeg: number): Vector3 =>
  mountDirection(readings, { altitudeZeroDeg, coneDeg: 0, axisSkewDeg: 0 });

/**
 * The altitude zero, degrees in [−90°, 90°], that makes the angle between two readings the angle
 * between two stars: the one nearest 0° of the two there are, or, where there is none, the one that
 * comes closest. Null when the azimuths are equal (or nearly: 10⁻⁵ degree), as then no zero matters.
 *
 * With D the difference and Σ the sum of the altitude readings and Δ the difference of the azimuths,
 * cos θ = cos² Δ/2 · cos D − sin² Δ/2 · cos(Σ + 2e) (spherical law of cosines), solved for e.
 */
export function altitudeZeroThatAgrees(
  starsApartDeg: number,
  first: Readings,
  second: Readings,
): number | null {
  const sinSquaredOfHalf = (angleDeg: number) => Math.sin(degreesToRadians(angleDeg) / 2) ** 2;
  const acrossSquared = sinSquaredOfHalf(first.azimuthDeg - second.azimuthDeg);
  if (acrossSquared < 1e-14) return null;
  const differenceDeg = first.altitudeDeg - second.altitudeDeg;
  const cosine =
    (2 * (sinSquaredOfHalf(starsApartDeg) - sinSquaredOfHalf(differenceDeg))) / acrossSquared -
    Math.cos(degreesToRadians(differenceDeg));
  const turnDeg: number = radiansToDegrees(Math.acos(Math.min(1, Math.max(-1, cosine))));
  const sumDeg = first.altitudeDeg + second.altitudeDeg;
  const zeros = [(turnDeg - sumDeg) / 2, (-turnDeg - sumDeg) / 2]
    // Half a turn of the zero gives the same angle again.
    .map((zeroDeg) => zeroDeg - 180 * Math.round(zeroDeg / 180))
    .sort((a, b) => Math.abs(a) - Math.abs(b));
  return zeros[0] ?? null;
}

/**
 * What a pointing computer makes of two sightings, without asking whether it is sensible: the
 * altitude zero if it solves for one, then the base by least squares on unit vectors. Null when the
 * two leave the zero or a turn of the base open.
 */
export function fitOnTwo(
  computer: Telescope['computer'],
  [first, second]: readonly [Sighting, Sighting],
): TwoStarFit | null {
  const starsApartDeg = separationDeg(first.sky, second.sky);
  const altitudeZeroDeg =
    computer === 'fixed-zero'
      ? 0
      : altitudeZeroThatAgrees(starsApartDeg, first.readings, second.readings);
  if (altitudeZeroDeg === null) return null;
  const to1 = believedDirection(first.readings, altitudeZeroDeg);
  const to2 = believedDirection(second.readings, altitudeZeroDeg);
  const base = fitRotation([
    { from: first.sky, to: to1, weight: 1 },
    { from: second.sky, to: to2, weight: 1 },
  ]);
  if (base === null) return null;
  return {
    model: { base, altitudeZeroDeg },
    mismatchArcmin: (starsApartDeg - separationDeg(to1, to2)) * 60,
  };
}
