import { refracted } from '../sky/refracted-direction';
import { siderealDegPerSecond } from '../sky/turned-frame';
import { wrap180, wrap360 } from '../units/angle';
import {
  azAltFromDirection,
  directionFromAzAlt,
  separationDeg,
  type Vector3,
} from '../units/vector';
import { directionOnHourCircle, type HourCircle } from './hour-angle';
import { formInstantMs, latitudeDegOf, longitudeDegOf, type MountForm } from './mount-form';

/** A sky in numbers: what a regrade needs of it, without an ephemeris. */
export type SkyInNumbers = {
  latitudeDeg: number;
  /** As in a sky frame. */
  refractionScale: number;
};

/** In what the sky that a mount believes in differs from the real one. */
export type BelievedSky = {
  /** By how much it is turned about the pole, westward positive, degrees in [−180°, 180°). */
  turnDeg: number;
  /** How high the mount takes the pole to stand: north is positive. */
  latitudeDeg: number;
  /** Where the mount takes north to be, from true north through east, degrees in [−180°, 180°). */
  startDeg: number;
};

/**
 * The sky that a form makes a mount believe in. A clock that is ahead has the sky turned on, westward,
 * and so has a longitude too far east: both by the same formula, 15.041° an hour and 1° a degree.
 * Null for a form with a day that no calendar has.
 */
export function believedSkyOf(
  form: MountForm,
  {
    right,
    summerTimeMinutes,
    startDeg = 0,
  }: { right: MountForm; summerTimeMinutes: number; startDeg?: number },
): BelievedSky | null {
  const believedMs = formInstantMs(form, summerTimeMinutes);
  const trueMs = formInstantMs(right, summerTimeMinutes);
  if (believedMs === null || trueMs === null) return null;
  const clockDeg = siderealDegPerSecond * ((believedMs - trueMs) / 1000);
  return {
    turnDeg: wrap180(clockDeg + longitudeDegOf(form) - longitudeDegOf(right)),
    latitudeDeg: latitudeDegOf(form),
    startDeg: wrap180(startDeg),
  };
}

/** Where a star is seen: east, north, up, refracted. */
export const seenAt = (star: HourCircle, { latitudeDeg, refractionScale }: SkyInNumbers): Vector3 =>
  refracted(directionOnHourCircle(star, latitudeDeg), refractionScale);

/**
 * Where the tube looks when it is sent to a star, in the real sky: level base, altitude read from the
 * horizon, azimuth from where the mount takes north to be. Against an ephemeris for the believed instant
 * and place: within 1.5′ for instants up to a year apart (precession and aberration of the star).
 */
export function tubeSentTo(
  { hourAngleDeg, declinationDeg }: HourCircle,
  believed: BelievedSky,
  { refractionScale }: SkyInNumbers,
): Vector3 {
  const meant = seenAt(
    { hourAngleDeg: hourAngleDeg + believed.turnDeg, declinationDeg },
    { latitudeDeg: believed.latitudeDeg, refractionScale },
  );
  if (believed.startDeg === 0) return meant;
  const { azimuthDeg, altitudeDeg } = azAltFromDirection(meant);
  return directionFromAzAlt(wrap360(azimuthDeg + believed.startDeg), altitudeDeg);
}

/** How far the tube is from a star it was sent to, degrees on the sky. */
export const missDeg = (star: HourCircle, believed: BelievedSky, sky: SkyInNumbers): number =>
  separationDeg(seenAt(star, sky), tubeSentTo(star, believed, sky));

/**
 * How far a base would have to lean for the believed sky to be the real one, degrees: what an alignment
 * on two stars finds, and what a computer that checks its base refuses when it is too much.
 */
export function leanDeg(believed: BelievedSky, { latitudeDeg }: SkyInNumbers): number {
  // The real zenith stands on the meridian as far from the equator as the latitude.
  const zenith = { hourAngleDeg: believed.turnDeg, declinationDeg: latitudeDeg };
  return separationDeg(directionOnHourCircle(zenith, believed.latitudeDeg), [0, 0, 1]);
}
