/** The planets bright enough to be taken for a star. */
export const nakedEyePlanets = ['mercury', 'venus', 'mars', 'jupiter', 'saturn'] as const;
export type NakedEyePlanet = (typeof nakedEyePlanets)[number];

/** A solar-system body's topocentric place. Azimuth from north through east; altitude refracted. */
export type BodyPlace = {
  azimuthDeg: number;
  altitudeDeg: number;
  /** Without refraction: what twilight and the Moon's light are reckoned from. */
  trueAltitudeDeg: number;
  magnitude: number;
};

/**
 * All that is needed to place the whole star catalogue in the local sky at one instant, as plain
 * numbers. It is computed once on the server (`skyFrameAt`), stored with an attempt and sent to the
 * browser, so that both work from the same sky and the browser needs no ephemeris.
 */
export type SkyFrame = {
  /** UTC, ISO 8601. */
  instant: string;
  /** Julian years since J2000.0, for proper motion. */
  yearsFromJ2000: number;
  /** Row-major 3×3, ICRS → (east, north, up) of date: precession, nutation, sidereal turn, place. */
  icrsToLocal: readonly number[];
  /** The Earth's barycentric velocity over c, ICRS axes: annual aberration. */
  earthVelocityOverC: readonly [number, number, number];
  /** P/1010 hPa · 283/(273 + T °C), the factor on refraction. */
  refractionScale: number;
  sun: BodyPlace;
  moon: BodyPlace & { illuminatedFraction: number };
  planets: readonly (BodyPlace & { body: NakedEyePlanet })[];
};
