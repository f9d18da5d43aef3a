/**
 * Worked examples of Jean Meeus, Astronomical Algorithms, 2nd ed. (values from memory, each recomputed
 * with ERFA). Example 16.a stands beside lib/sky/refraction.ts.
 */
import { describe, expect, it } from 'vitest';
import type { StarCatalogue } from '../../lib/sky/catalogue';
import {
  AstroTime,
  deltaTSeconds,
  observerAt,
  Rotation_EQD_HOR,
  type GeographicPlace,
} from '../../lib/sky/astronomy';
import { skyFrameAt } from '../../lib/sky/frame-at';
import { placeCatalogue } from '../../lib/sky/star-places';
import { degreesToRadians, radiansToDegrees, wrap360 } from '../../lib/units/angle';
import { azAltFromDirection, separationDeg, type Vector3 } from '../../lib/units/vector';

const dms = (degrees: number, minutes: number, seconds: number) =>
  degrees + minutes / 60 + seconds / 3600;

const equatorial = (raDeg: number, decDeg: number): Vector3 => {
  const ra = degreesToRadians(raDeg);
  const dec = degreesToRadians(decDeg);
  return [Math.cos(dec) * Math.cos(ra), Math.cos(dec) * Math.sin(ra), Math.sin(dec)];
};

/** Equator and equinox of date → (east, north, up), and back. */
function turnOfDate(instant: Date, place: GeographicPlace) {
  const { rot } = Rotation_EQD_HOR(new AstroTime(instant), observerAt(place));
  const at = (from: number, to: number) => rot[from]?.[to] ?? NaN;
  return {
    toLocal: (u: Vector3): Vector3 => {
      const [north, west, up] = [0, 1, 2].map(
        (to) => at(0, to) * u[0] + at(1, to) * u[1] + at(2, to) * u[2],
      );
      return [-(west ?? NaN), north ?? NaN, up ?? NaN];
    },
    toEquator: ([east, north, up]: Vector3): Vector3 => {
      const [x, y, z] = [0, 1, 2].map(
        (from) => at(from, 0) * north - at(from, 1) * east + at(from, 2) * up,
      );
      return [x ?? NaN, y ?? NaN, z ?? NaN];
    },
  };
}

/** Apparent sidereal time at Greenwich: the right ascension that stands over 0° N 0° E. */
function apparentSiderealDeg(instant: Date): number {
  const overhead = turnOfDate(instant, { latitudeDeg: 0, longitudeDeg: 0, elevationM: 0 });
  const [x, y] = overhead.toEquator([0, 0, 1]);
  return wrap360(radiansToDegrees(Math.atan2(y, x)));
}

describe('sidereal time at Greenwich on 1987 April 10', () => {
  // The frame turns by apparent time; the examples' mean time is less by Δψ cos ε. Δψ and ε at 0 h from
  // example 22.a, at 19:21 from example 13.b.
  it.each([
    ['12.a', '1987-04-10T00:00:00Z', dms(13, 10, 46.3668), -3.788, 23.4436],
    ['12.b', '1987-04-10T19:21:00Z', dms(8, 34, 57.0896), -3.868, 23.4436],
  ])('example %s', (_, utc, meanHours, nutationArcsec, obliquityDeg) => {
    const equinoxes = (nutationArcsec * Math.cos(degreesToRadians(obliquityDeg))) / 3600;
    const mean = apparentSiderealDeg(new Date(utc)) - equinoxes;
    // 0.01 s of time is 0.15″, the library's truncation of the nutation series.
    expect(Math.abs(mean - meanHours * 15) * 3600).toBeLessThan(0.15);
  });
});

describe('a place in the local sky', () => {
  it('example 13.b: Venus from Washington, 1987 April 10, 19:21 UT', () => {
    const place = {
      latitudeDeg: dms(38, 55, 17),
      longitudeDeg: -dms(77, 3, 56),
      elevationM: 0,
    };
    const venus = equatorial(15 * dms(23, 9, 16.641), -dms(6, 43, 11.61));
    const turn = turnOfDate(new Date('1987-04-10T19:21:00Z'), place);
    const { azimuthDeg, altitudeDeg } = azAltFromDirection(turn.toLocal(venus));
    // The book gives four decimals: 68.0337° from south is 248.0337° from north.
    expect(azimuthDeg).toBeCloseTo(248.0337, 3);
    expect(altitudeDeg).toBeCloseTo(15.1249, 3);
  });

  it('example 17.a: Arcturus and Spica are 32.7930° apart', () => {
    const arcturus = equatorial(213.9154, 19.1825);
    const spica = equatorial(201.2983, -11.1614);
    expect(separationDeg(arcturus, spica)).toBeCloseTo(32.793, 4);
  });
});

describe('apparent place', () => {
  // θ Persei: 2000.0 place and yearly motion (0.03425 s, −0.0895″) are the example's own.
  it('example 23.a: θ Persei on 2028 November 13.19 TD', () => {
    const raDeg = 15 * dms(2, 44, 11.986);
    const decDeg = dms(49, 13, 42.48);
    const catalogue: StarCatalogue = {
      version: 'example',
      stars: [
        {
          hip: 12777,
          hr: 799,
          raDeg,
          decDeg,
          pmRaMasYr: 0.03425 * 15_000 * Math.cos(degreesToRadians(decDeg)),
          pmDecMasYr: -89.5,
          magnitude: 4.1,
          colourIndex: null,
          name: null,
          bayer: 'θ',
          constellation: 'Per',
          largeAmplitudeVariable: false,
        },
      ],
      figures: [],
    };
    const terrestrial = Date.UTC(2028, 10, 13) + 0.19 * 86_400_000;
    const instant = new Date(terrestrial - deltaTSeconds * 1000);
    const place = { latitudeDeg: 40, longitudeDeg: 0, elevationM: 0 };
    const places = placeCatalogue(catalogue, skyFrameAt({ instant, place }));
    const [east = NaN, north = NaN, up = NaN] = places.directions;
    const found = turnOfDate(instant, place).toEquator([east, north, up]);
    const published = equatorial(15 * dms(2, 46, 14.39), dms(49, 21, 7.45));
    // The bound of the method, see star-altaz.test.ts.
    expect(separationDeg(found, published) * 3600).toBeLessThan(0.85);
  });
});
