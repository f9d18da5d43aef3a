import { brightStars } from '@/lib/clock/bright-stars';
import { directionOnHourCircle, type HourCircle } from '@/lib/clock/hour-angle';
import { refractionDeg } from '@/lib/sky/refraction';
import { degreesToRadians, radiansToDegrees, wrap180, wrap360 } from '@/lib/units/angle';
import { azAltFromDirection } from '@/lib/units/vector';
import type { SkyPosition } from '../sky-disc';

/*
 * A sky for a figure, light enough for the browser: no ephemeris, good to a few hundredths of a degree
 * for stars and the Sun within decades of 2000. What is marked anywhere comes from lib/sky instead.
 */

const dayMs = 86_400_000;
const j2000Ms = Date.UTC(2000, 0, 1, 12);

const daysFromJ2000 = (ms: number): number => (ms - j2000Ms) / dayMs;

/** Mean sidereal time at Greenwich, degrees. Meeus, *Astronomical Algorithms* 2nd ed., eq. 12.4, without its square term. */
export const greenwichSiderealDeg = (ms: number): number =>
  wrap360(280.460_618_37 + 360.985_647_366_29 * daysFromJ2000(ms));

/** Precession in right ascension and declination, degrees a year. Meeus ch. 21, the low-accuracy formulae. */
const precessionRaDeg = 3.075 / 240;
const precessionDecDeg = 20.04 / 3600;

type Equatorial = { raDeg: number; decDeg: number };

/** A star's place of date from J2000.0: precession only. Poor in right ascension close to the pole, where it hardly matters. */
function ofDate({ raDeg, decDeg }: Equatorial, ms: number): Equatorial {
  const years = daysFromJ2000(ms) / 365.25;
  const ra = degreesToRadians(raDeg);
  const east = precessionDecDeg * Math.sin(ra) * Math.tan(degreesToRadians(decDeg));
  return {
    raDeg: raDeg + years * (precessionRaDeg + east),
    decDeg: decDeg + years * precessionDecDeg * Math.cos(ra),
  };
}

/** The Sun to 0.01°. *Astronomical Almanac*, "low-precision formulas for the Sun", from memory. */
function sunOfDate(ms: number): Equatorial {
  const days = daysFromJ2000(ms);
  const anomaly = degreesToRadians(357.528 + 0.985_600_3 * days);
  const longitude = degreesToRadians(
    280.46 + 0.985_647_4 * days + 1.915 * Math.sin(anomaly) + 0.02 * Math.sin(2 * anomaly),
  );
  const tilt = degreesToRadians(23.439 - 0.000_000_4 * days);
  return {
    raDeg: radiansToDegrees(Math.atan2(Math.cos(tilt) * Math.sin(longitude), Math.cos(longitude))),
    decDeg: radiansToDegrees(Math.asin(Math.sin(tilt) * Math.sin(longitude))),
  };
}

const circleOf = ({ raDeg, decDeg }: Equatorial, ms: number, longitudeDeg: number): HourCircle => ({
  hourAngleDeg: wrap180(greenwichSiderealDeg(ms) + longitudeDeg - raDeg),
  declinationDeg: decDeg,
});

/** Where something on an hour circle is seen from a latitude, refracted. */
export function seenFrom(circle: HourCircle, latitudeDeg: number): SkyPosition {
  const { azimuthDeg, altitudeDeg } = azAltFromDirection(
    directionOnHourCircle(circle, latitudeDeg),
  );
  return { azimuthDeg, altitudeDeg: altitudeDeg + refractionDeg(altitudeDeg) };
}

export type MomentStar = HourCircle & { name: string; magnitude: number };

/** The bright stars, up or not, at an instant (milliseconds of the Unix epoch) and a longitude (east positive). */
export const starsAt = (ms: number, longitudeDeg: number): MomentStar[] =>
  brightStars.map(({ name, magnitude, raDeg, decDeg }) => ({
    ...circleOf(ofDate({ raDeg, decDeg }, ms), ms, longitudeDeg),
    name: name ?? '',
    magnitude,
  }));

/** The Sun's altitude, degrees, without refraction. */
export const sunAltitudeDeg = (ms: number, latitudeDeg: number, longitudeDeg: number): number =>
  azAltFromDirection(directionOnHourCircle(circleOf(sunOfDate(ms), ms, longitudeDeg), latitudeDeg))
    .altitudeDeg;
