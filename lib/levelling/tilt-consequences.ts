import { fitOnTwo } from '../pointing/fit-on-two';
import { goToReadings, largestBaseTiltDeg } from '../pointing/align';
import { mountDirection, readingsOf } from '../pointing/mount';
import type { Readings } from '../pointing/pointing-model';
import { targetAzimuthDeg, targetBands } from '../pointing/target-grid';
import { degreesToRadians, wrap180 } from '../units/angle';
import { aboutAxis, transform, transpose, type Matrix3 } from '../units/matrix';
import {
  azAltFromDirection,
  directionFromAzAlt,
  separationDeg,
  type Vector3,
} from '../units/vector';
import type { Tilt } from './head-slope';

/*
 * What a base off level does to pointing, through the exact mechanics of a mount whose making has no
 * error: so that what is left over is the tilt's own.
 */

/** On the true sky: azimuth from north, altitude, degrees. */
export type SkyPlace = { azimuthDeg: number; altitudeDeg: number };

/** Where the tube came to rest against where it was sent: above and clockwise are positive. */
export type Landing = { upArcmin: number; clockwiseArcmin: number; missArcmin: number };

const faultless = { altitudeZeroDeg: 0, coneDeg: 0, axisSkewDeg: 0 };

const towards = ({ azimuthDeg, altitudeDeg }: SkyPlace): Vector3 =>
  directionFromAzAlt(azimuthDeg, altitudeDeg);

/** Local sky → a base that faces north and stands on a head that rises towards an azimuth. */
function leaningBase({ tiltDeg, risesTowardsDeg }: Tilt): Matrix3 {
  const azimuth = degreesToRadians(risesTowardsDeg);
  // About the level line across the slope; by the right-hand rule the far side goes up.
  return transpose(aboutAxis([Math.cos(azimuth), -Math.sin(azimuth), 0], tiltDeg));
}

function landing(base: Matrix3, readings: Readings, wanted: SkyPlace): Landing {
  const at = transform(transpose(base), mountDirection(readings, faultless));
  const { azimuthDeg, altitudeDeg } = azAltFromDirection(at);
  return {
    upArcmin: 60 * (altitudeDeg - wanted.altitudeDeg),
    clockwiseArcmin:
      60 * wrap180(azimuthDeg - wanted.azimuthDeg) * Math.cos(degreesToRadians(wanted.altitudeDeg)),
    missArcmin: 60 * separationDeg(at, towards(wanted)),
  };
}

/**
 * A slew before any alignment: the computer takes the base as level and its start position was right.
 * To first order it lands t cos(A − A_t) high (design, "Levelling").
 */
export const firstSlew = (tilt: Tilt, star: SkyPlace): Landing =>
  landing(leaningBase(tilt), star, star);

/**
 * A go-to of a computer that never doubts that the base is level: it was set right on one star, which
 * turns its two circles by what was missing there, and no more.
 */
export function takenAsLevel(tilt: Tilt, setOn: SkyPlace, target: SkyPlace): Landing {
  const base = leaningBase(tilt);
  const read = readingsOf(transform(base, towards(setOn)), faultless);
  if (read === null) throw new Error('a faultless mount reaches every star');
  return landing(
    base,
    {
      azimuthDeg: target.azimuthDeg + read.azimuthDeg - setOn.azimuthDeg,
      altitudeDeg: target.altitudeDeg + read.altitudeDeg - setOn.altitudeDeg,
    },
    target,
  );
}

/** The 533 directions that go-tos are reckoned over. */
const everyTarget: readonly SkyPlace[] = targetBands.flatMap((band) =>
  Array.from({ length: band.count }, (_, j) => ({
    azimuthDeg: targetAzimuthDeg(band, j),
    altitudeDeg: band.altitudeDeg,
  })),
);

const worst = (landings: readonly Landing[]): number =>
  Math.max(...landings.map(({ missArcmin }) => missArcmin));

/** The worst that a tilt leaves anywhere on that sky, arcminutes. */
export type TiltConsequences = {
  firstSlewsArcmin: number;
  /** Null where the computer refuses the alignment, as it believes in no base that leans so far. */
  afterTwoStarsArcmin: number | null;
  takenAsLevelArcmin: number;
};

/** Aligned, or set, on stars that were centred without any error. */
export function tiltConsequences(tilt: Tilt, first: SkyPlace, second: SkyPlace): TiltConsequences {
  return {
    firstSlewsArcmin: worst(everyTarget.map((target) => firstSlew(tilt, target))),
    afterTwoStarsArcmin: afterTwoStars(tilt, first, second),
    takenAsLevelArcmin: worst(everyTarget.map((target) => takenAsLevel(tilt, first, target))),
  };
}

/** The worst go-to after an alignment on two stars; null where it is refused. */
function afterTwoStars(tilt: Tilt, first: SkyPlace, second: SkyPlace): number | null {
  if (tilt.tiltDeg > largestBaseTiltDeg) return null;
  const base = leaningBase(tilt);
  const sighting = (star: SkyPlace) => {
    const readings = readingsOf(transform(base, towards(star)), faultless);
    if (readings === null) throw new Error('a faultless mount reaches every star');
    return { sky: towards(star), readings };
  };
  const fit = fitOnTwo('fixed-zero', [sighting(first), sighting(second)]);
  if (fit === null) throw new Error('a pair of stars that leaves a turn open is no pair');
  return worst(
    everyTarget.map((target) => {
      const readings = goToReadings(fit.model, towards(target));
      if (readings === null) throw new Error('a model without cone and skew reaches everything');
      return landing(base, readings, target);
    }),
  );
}
