import { radiansToDegrees } from '../units/angle';
import { transform, type Matrix3 } from '../units/matrix';
import { azAltFromDirection, separationDeg, type Vector3 } from '../units/vector';
import { believedDirection, fitOnTwo, type Sighting } from './fit-on-two';
import { readingsOf } from './mount';
import { pairConditionNumber } from './pair-condition';
import { highestConditionNumber } from './pair-error-model';
import type { AlignmentOutcome, PointingModel, Readings } from './pointing-model';
import type { Telescope } from './scenario';

/**
 * A larger mismatch between the angles is a wrong star, arcminutes. An honest one comes from the
 * prior of a fixed zero, 10′, which counts twice between stars on opposite sides; centring, 7.5′ at
 * each star; cone, 8′, and skew, 4′: √(20² + 2·7.5² + 8² + 4²) = 24′ at most, and three times that,
 * rounded up. Where the zero is solved for it applies to what no zero could take away.
 */
export const largestMismatchArcmin = 75;

/** No mount's altitude zero is further off, degrees (design: mechanics of the mount). */
export const largestAltitudeZeroDeg = 3;

/** No base stands further off level, degrees (design: mechanics of the mount). */
export const largestBaseTiltDeg = 5;

/** Between the vertical of a base and the true vertical, degrees. */
export const baseTiltDeg = (base: Matrix3): number =>
  radiansToDegrees(Math.atan2(Math.hypot(base[2], base[5]), base[8]));

/**
 * Aligns a pointing computer on two stars: `sky` where it believes them (refracted, local frame) and
 * the readings at which they were confirmed. Two stars taken for each other leave the angle perfect
 * and show in the base; at equal altitude on opposite sides of the zenith they do not even there, and
 * only a third star tells.
 */
export function alignOnTwo(
  computer: Telescope['computer'],
  sightings: readonly [Sighting, Sighting],
): AlignmentOutcome {
  const [first, second] = sightings;
  const condition = pairConditionNumber(
    computer,
    azAltFromDirection(first.sky),
    azAltFromDirection(second.sky),
  );
  if (!(condition <= highestConditionNumber)) return { kind: 'undetermined' };

  const fit = fitOnTwo(computer, sightings);
  if (fit === null) return outcomeWithoutFit(computer, sightings);
  const { model, mismatchArcmin } = fit;
  const disagrees = Math.abs(mismatchArcmin) > largestMismatchArcmin;
  if (computer === 'fixed-zero' && disagrees) return { kind: 'disagree', mismatchArcmin };
  if (disagrees) return { kind: 'absurd-zero', altitudeZeroDeg: null };
  if (Math.abs(model.altitudeZeroDeg) > largestAltitudeZeroDeg) {
    return { kind: 'absurd-zero', altitudeZeroDeg: model.altitudeZeroDeg };
  }
  const tilt = baseTiltDeg(model.base);
  return tilt > largestBaseTiltDeg
    ? { kind: 'base-on-its-side', baseTiltDeg: tilt, mismatchArcmin }
    : { kind: 'agree', model, mismatchArcmin, baseTiltDeg: tilt };
}

/** The stars would do, but the readings lie on one line or at one azimuth. */
function outcomeWithoutFit(
  computer: Telescope['computer'],
  [first, second]: readonly [Sighting, Sighting],
): AlignmentOutcome {
  const mismatchArcmin =
    60 *
    (separationDeg(first.sky, second.sky) -
      separationDeg(believedDirection(first.readings, 0), believedDirection(second.readings, 0)));
  if (Math.abs(mismatchArcmin) <= largestMismatchArcmin) return { kind: 'undetermined' };
  return computer === 'fixed-zero'
    ? { kind: 'disagree', mismatchArcmin }
    : { kind: 'absurd-zero', altitudeZeroDeg: null };
}

/**
 * The readings that a go-to drives to for a direction of the sky (refracted, local frame). Null is for
 * mounts that cannot reach it; a computer that knows nothing of cone and skew believes in no such place.
 */
export const goToReadings = (model: PointingModel, sky: Vector3): Readings | null =>
  readingsOf(transform(model.base, sky), {
    altitudeZeroDeg: model.altitudeZeroDeg,
    coneDeg: 0,
    axisSkewDeg: 0,
  });
