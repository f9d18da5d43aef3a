import { degreesToRadians } from '@/lib/units/angle';

/** Where the Sun is over a night that begins on a day of the year. */
export type SunDown = {
  /** Hours after local noon from which the Sun's middle is so far down; 0: even at noon; null: never. */
  sunset: number | null;
  civil: number | null;
  nautical: number | null;
  astronomical: number | null;
};

/** Days from 2000 January 1, noon, to 2026 January 1, midnight; another year differs by a quarter degree. */
const toStartOf2026 = 9496.5;

/**
 * The Sun's declination in degrees at noon of a day of the year (1 = 1 January 2026). Low-precision
 * formula of the Astronomical Almanac, page C5: within 0.01° between 1950 and 2050 (from memory).
 */
function sunDeclinationDeg(dayOfYear: number): number {
  const n = toStartOf2026 + dayOfYear - 0.5;
  const anomaly = degreesToRadians(357.528 + 0.9856003 * n);
  const longitudeDeg =
    280.46 + 0.9856474 * n + 1.915 * Math.sin(anomaly) + 0.02 * Math.sin(2 * anomaly);
  const sine = Math.sin(degreesToRadians(23.439)) * Math.sin(degreesToRadians(longitudeDeg));
  return (Math.asin(sine) * 180) / Math.PI;
}

/**
 * Hours from local noon until the Sun's middle stands at an altitude (true, degrees):
 * cos H = (sin h − sin φ sin δ)/(cos φ cos δ) (Meeus, Astronomical Algorithms, ch. 15). The declination
 * is held through the evening: off by a minute or two of time.
 */
function hoursUntilAltitude(
  latitudeDeg: number,
  declinationDeg: number,
  altitudeDeg: number,
): number | null {
  const [phi, delta, h] = [latitudeDeg, declinationDeg, altitudeDeg].map(degreesToRadians);
  if (phi === undefined || delta === undefined || h === undefined) return null;
  const cosine =
    (Math.sin(h) - Math.sin(phi) * Math.sin(delta)) / (Math.cos(phi) * Math.cos(delta));
  if (cosine < -1) return null;
  return (Math.acos(Math.min(1, cosine)) * 180) / Math.PI / 15;
}

/** Sunset with refraction and the Sun's own size, then the three twilights, as the engine defines them. */
export function sunDown(latitudeDeg: number, dayOfYear: number): SunDown {
  const declination = sunDeclinationDeg(dayOfYear);
  const until = (altitudeDeg: number) => hoursUntilAltitude(latitudeDeg, declination, altitudeDeg);
  return {
    sunset: until(-0.833),
    civil: until(-6),
    nautical: until(-12),
    astronomical: until(-18),
  };
}
