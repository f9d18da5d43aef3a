import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wrap180 } from '../units/angle';
import { azAltFromDirection, separationDeg, type Vector3 } from '../units/vector';
import type { CatalogueStar, StarCatalogue } from './catalogue';
import { skyFrameAt } from './frame-at';
import { refractionDeg } from './refraction';
import type { SkyFrame } from './sky-frame';
import { makeStarPlaces, placeCatalogue } from './star-places';

const star = (raDeg: number, decDeg: number, pmRaMasYr = 0, pmDecMasYr = 0): CatalogueStar => ({
  hip: 1,
  hr: null,
  raDeg,
  decDeg,
  pmRaMasYr,
  pmDecMasYr,
  magnitude: 2,
  colourIndex: null,
  name: null,
  bayer: '',
  constellation: 'And',
  largeAmplitudeVariable: false,
});
const catalogueOf = (...stars: CatalogueStar[]): StarCatalogue => ({
  version: 'test',
  stars,
  figures: [],
});

/** ICRS axes taken as the local ones: east is the equinox, up the pole. */
const still: SkyFrame = {
  instant: '2000-01-01T12:00:00.000Z',
  yearsFromJ2000: 0,
  icrsToLocal: [1, 0, 0, 0, 1, 0, 0, 0, 1],
  earthVelocityOverC: [0, 0, 0],
  refractionScale: 0,
  sun: { azimuthDeg: 0, altitudeDeg: -40, trueAltitudeDeg: -40, magnitude: -27 },
  moon: {
    azimuthDeg: 0,
    altitudeDeg: -40,
    trueAltitudeDeg: -40,
    magnitude: -12,
    illuminatedFraction: 0,
  },
  planets: [],
};

const only = (values: Float64Array, index = 0) => values[index] ?? NaN;
const directionOf = (directions: Float64Array): Vector3 => [
  only(directions, 0),
  only(directions, 1),
  only(directions, 2),
];

const munich = { latitudeDeg: 48.14, longitudeDeg: 11.58, elevationM: 520 };

describe('placing the catalogue', () => {
  it('azimuth, altitude and direction tell the same place, all over the sky', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 360, noNaN: true }),
        fc.double({ min: -89.9, max: 89.9, noNaN: true }),
        (raDeg, decDeg) => {
          const places = placeCatalogue(catalogueOf(star(raDeg, decDeg)), {
            ...still,
            refractionScale: 1,
          });
          const { azimuthDeg, altitudeDeg } = azAltFromDirection(directionOf(places.directions));
          expect(wrap180(only(places.azimuthDeg) - azimuthDeg)).toBeCloseTo(0, 10);
          expect(only(places.azimuthDeg)).toBeLessThan(360);
          expect(only(places.altitudeDeg)).toBeCloseTo(altitudeDeg + refractionDeg(altitudeDeg), 7);
        },
      ),
    );
  });

  it('a star overhead, and one a hair west of north, have a proper azimuth', () => {
    const overhead = placeCatalogue(catalogueOf(star(0, 90)), {
      ...still,
      icrsToLocal: [0, 1, 0, 1, 0, 0, 0, 0, 1],
    });
    expect(only(overhead.altitudeDeg)).toBeCloseTo(90, 12);
    expect(only(overhead.azimuthDeg)).toBeGreaterThanOrEqual(0);
    expect(only(overhead.azimuthDeg)).toBeLessThan(360);
    const north = placeCatalogue(catalogueOf(star(90 + 1e-14, 0)), still);
    expect(only(north.azimuthDeg)).toBeLessThan(360);
  });

  it('moves a star by its proper motion: 1″ a year east is 25″ in 25 years', () => {
    const at = (years: number) =>
      directionOf(
        placeCatalogue(catalogueOf(star(40, 60, 1000, 0)), { ...still, yearsFromJ2000: years })
          .directions,
      );
    expect(separationDeg(at(0), at(25)) * 3600).toBeCloseTo(25, 5);
    expect(azAltFromDirection(at(25)).altitudeDeg).toBeCloseTo(60, 5);
  });

  // The constant of annual aberration, 20.496″ (IAU 1976), is the greatest shift of a circular orbit.
  it('shifts a star towards where the Earth is going, by 20.5″ at most', () => {
    const frame = skyFrameAt({ instant: '2026-03-20T00:00:00Z', place: munich });
    const speed = Math.hypot(...frame.earthVelocityOverC);
    expect(((speed * 180) / Math.PI) * 3600).toBeGreaterThan(20.496 * (1 - 0.018));
    expect(((speed * 180) / Math.PI) * 3600).toBeLessThan(20.496 * (1 + 0.018));
    const shifted = placeCatalogue(catalogueOf(star(0, 90)), {
      ...still,
      earthVelocityOverC: [1e-4, 0, 0],
    });
    expect(only(shifted.directions, 0)).toBeCloseTo(1e-4, 10);
  });

  // A sidereal day is 86,164.0905 s of time (IERS): 3 m 55.9 s short of a day.
  it('has every star back 3 m 56 s earlier the next day', () => {
    const stars = catalogueOf(star(101.287, -16.716), star(213.915, 19.182), star(37.95, 89.264));
    const evening = Date.parse('2026-01-15T20:00:00Z');
    const at = (ms: number) =>
      placeCatalogue(stars, skyFrameAt({ instant: new Date(ms), place: munich }));
    const first = at(evening);
    const next = at(evening + 86_164_090.5);
    stars.stars.forEach((_, i) => {
      const apart = separationDeg(
        directionOf(first.directions.subarray(3 * i)),
        directionOf(next.directions.subarray(3 * i)),
      );
      // In a day the Earth's velocity turns by 0.986°, so aberration changes by up to 20.5″ · 0.0172 =
      // 0.35″; precession adds 50.3″/365 = 0.14″ and nutation's fortnightly term about 0.1″.
      expect(apart * 3600).toBeLessThan(0.6);
    });
  });

  it('fills the arrays it is given, and the same star comes out the same', () => {
    const catalogue = catalogueOf(star(10, 20), star(200, -30));
    const into = makeStarPlaces(2);
    expect(placeCatalogue(catalogue, still, into)).toBe(into);
    expect(into).toEqual(placeCatalogue(catalogue, still));
  });
});

describe('the frame', () => {
  it('is a rotation, and carries the same numbers through JSON', () => {
    const frame = skyFrameAt({ instant: new Date('2026-12-05T18:30:00Z'), place: munich });
    const rows = [0, 3, 6].map((i) => frame.icrsToLocal.slice(i, i + 3));
    rows.forEach((u, i) => {
      rows.forEach((v, j) => {
        const product = u.reduce((sum, value, k) => sum + value * (v[k] ?? NaN), 0);
        expect(product).toBeCloseTo(i === j ? 1 : 0, 12);
      });
    });
    expect(JSON.parse(JSON.stringify(frame))).toEqual(frame);
    expect(frame.instant).toBe('2026-12-05T18:30:00.000Z');
    expect(frame.planets.map((planet) => planet.body)).toEqual([
      'mercury',
      'venus',
      'mars',
      'jupiter',
      'saturn',
    ]);
  });

  it('refracts Sun, Moon and planets as it does the stars', () => {
    const frame = skyFrameAt({
      instant: '2026-12-05T06:30:00Z',
      place: munich,
      pressureHpa: 950,
      temperatureC: -5,
    });
    expect(frame.refractionScale).toBeCloseTo(((950 / 1010) * 283) / 268, 12);
    for (const body of [frame.sun, frame.moon, ...frame.planets]) {
      const lift = body.altitudeDeg - body.trueAltitudeDeg;
      expect(lift).toBeCloseTo(refractionDeg(body.trueAltitudeDeg, frame.refractionScale), 12);
    }
  });

  it('refuses an instant or a place that is none', () => {
    expect(() => skyFrameAt({ instant: 'tonight', place: munich })).toThrow(RangeError);
    for (const place of [
      { ...munich, latitudeDeg: 90.01 },
      { ...munich, longitudeDeg: -181 },
      { ...munich, latitudeDeg: NaN },
    ]) {
      expect(() => skyFrameAt({ instant: '2026-12-05T18:30:00Z', place })).toThrow(RangeError);
    }
  });
});
