import { radiansToArcminutes, arcminutesToRadians } from '../units/angle';
import { targetBands, targetAzimuthDeg, targetCount } from './target-grid';
import { degreesToRadians } from '../units/angle';
import { pairConditionNumber } from './pair-condition';
import { pairErrorModel, type PairErrorModel } from './pair-error-model';
import type { Telescope } from './scenario';
import type { StarPosition } from './star-position';

export type PairWorth = {
  /** Root mean square over the target grid; null when the pair is undetermined. */
  expectedErrorArcmin: number | null;
  /** Share of the targets that land inside the field radius, 0–1. */
  hitRate: number;
  conditionNumber: number;
};

// The grid folded once. Every ring is evenly spaced, so whatever goes with sin A, cos A, sin 2A or
// cos 2A averages to nothing over it (each has at least 16 targets) and these four means are left.
const mean = (value: (sinAltitude: number, cosAltitude: number) => number): number =>
  targetBands.reduce((sum, b) => sum + b.count * value(b.sinAltitude, b.cosAltitude), 0) /
  targetCount;
const meanCos = mean((_, cos) => cos);
const meanSinCos = mean((sin, cos) => sin * cos);
const meanSin2 = mean((sin) => sin * sin);
const meanCos2 = mean((_, cos) => cos * cos);

/** Root mean square pointing error over the grid, arcminutes. */
export function expectedErrorArcmin(model: PairErrorModel): number {
  const [kxx, kyy, kzz] = model.rotation;
  const square =
    kxx +
    kyy +
    kzz -
    (meanCos2 / 2) * (kxx + kyy) -
    meanSin2 * kzz +
    2 * (meanCos * model.cone[2] + meanSinCos * model.skew[2]) +
    model.constant +
    meanSin2 * model.skewVariance;
  return radiansToArcminutes(Math.sqrt(square));
}

// cos A, sin A, cos 2A, sin 2A of every target, ring after ring.
const harmonics = new Float64Array(4 * targetCount);
{
  let at = 0;
  for (const band of targetBands) {
    for (let j = 0; j < band.count; j++) {
      const azimuth = degreesToRadians(targetAzimuthDeg(band, j));
      harmonics[at++] = Math.cos(azimuth);
      harmonics[at++] = Math.sin(azimuth);
      harmonics[at++] = Math.cos(2 * azimuth);
      harmonics[at++] = Math.sin(2 * azimuth);
    }
  }
}

/**
 * Share of the grid that a go-to lands within the field radius of: the mean of 1 − exp(−r²/E|Δ|²).
 * Exact for an isotropic Gaussian error, within a few points otherwise: an approximation.
 *
 * Along a ring of equal altitude the expected square is a trigonometric polynomial of degree two
 * in azimuth, so five coefficients a ring replace the whole model.
 */
export function hitRate(model: PairErrorModel, fieldRadiusArcmin: number): number {
  const [kxx, kyy, kzz, kxy, kxz, kyz] = model.rotation;
  const minusRadius2 = -(arcminutesToRadians(fieldRadiusArcmin) ** 2);
  const half = (kxx + kyy) / 2;
  const trace = kxx + kyy + kzz + model.constant;
  let missed = 0;
  let at = 0;
  for (const band of targetBands) {
    const sin = band.sinAltitude;
    const cos = band.cosAltitude;
    const level =
      trace -
      cos * cos * half +
      sin * sin * (model.skewVariance - kzz) +
      2 * cos * (model.cone[2] + sin * model.skew[2]);
    const withCos =
      2 * (model.east[0] - cos * sin * kyz - sin * (model.cone[1] + sin * model.skew[1]));
    const withSin =
      2 * (-model.east[1] - cos * sin * kxz - sin * (model.cone[0] + sin * model.skew[0]));
    const withCos2 = (cos * cos * (kxx - kyy)) / 2;
    const withSin2 = -cos * cos * kxy;
    const end = at + 4 * band.count;
    for (; at < end; at += 4) {
      const square =
        level +
        withCos * (harmonics[at] ?? 0) +
        withSin * (harmonics[at + 1] ?? 0) +
        withCos2 * (harmonics[at + 2] ?? 0) +
        withSin2 * (harmonics[at + 3] ?? 0);
      missed += Math.exp(minusRadius2 / square);
    }
  }
  return 1 - missed / targetCount;
}

/** Expected error, hit rate and conditioning of aligning on these two stars. */
export function pairWorth(
  telescope: Telescope,
  fieldRadiusArcmin: number,
  star1: StarPosition,
  star2: StarPosition,
): PairWorth {
  const conditionNumber = pairConditionNumber(telescope.computer, star1, star2);
  const model = pairErrorModel(telescope, star1, star2);
  return model === null
    ? { expectedErrorArcmin: null, hitRate: 0, conditionNumber }
    : {
        expectedErrorArcmin: expectedErrorArcmin(model),
        hitRate: hitRate(model, fieldRadiusArcmin),
        conditionNumber,
      };
}
