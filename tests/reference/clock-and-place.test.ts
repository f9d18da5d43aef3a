import { Body, DefineStar, Equator, Horizon, MakeTime, Observer } from 'astronomy-engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { believedSkyOf, missDeg, tubeSentTo } from '@/lib/clock/believed-place';
import { declinationAt } from '@/lib/clock/declination';
import { hourCircleOf } from '@/lib/clock/hour-angle';
import {
  formInstantMs,
  latitudeDegOf,
  longitudeDegOf,
  placeFields,
  type MountForm,
} from '@/lib/clock/mount-form';
import { compassBearingOfNorthDeg } from '@/lib/clock/needle';
import { moonRunsDeg } from '@/lib/clock/split-by-cause';
import { wrap360 } from '@/lib/units/angle';
import { directionFromAzAlt, separationDeg, type Vector3 } from '@/lib/units/vector';

/*
 * The sky a mount believes in, held to astronomy-engine 2.1 used by itself: its own star, its own
 * precession, nutation, aberration and horizon, for the instant and the place that were entered.
 */

const right: MountForm = {
  year: 2026,
  month: 8,
  day: 14,
  hour: 22,
  minute: 30,
  zoneMinutes: 60,
  summerTime: true,
  ...placeFields(50 * 60 + 7, 8 * 60 + 41),
};
const truth = { right, summerTimeMinutes: 60 };

/** Right ascension and declination, ICRS, J2000.0: from the Hipparcos catalogue, rounded. */
const stars = [
  { name: 'Arcturus', raDeg: 213.9153, decDeg: 19.1824 },
  { name: 'Vega', raDeg: 279.2347, decDeg: 38.7837 },
  { name: 'Altair', raDeg: 297.6958, decDeg: 8.8683 },
  { name: 'Dubhe', raDeg: 165.932, decDeg: 61.751 },
];

/** Unrefracted: east, north, up. */
function byTheLibrary(star: (typeof stars)[number], form: MountForm): Vector3 {
  const ms = formInstantMs(form, 60);
  if (ms === null) throw new Error('not a date');
  const time = MakeTime(new Date(ms));
  const observer = new Observer(latitudeDegOf(form), longitudeDegOf(form), 0);
  DefineStar(Body.Star1, star.raDeg / 15, star.decDeg, 1000);
  const { ra, dec } = Equator(Body.Star1, time, observer, true, true);
  const { azimuth, altitude } = Horizon(time, observer, ra, dec);
  return directionFromAzAlt(azimuth, altitude);
}

const sky = { latitudeDeg: latitudeDegOf(right), refractionScale: 0 };

function tubeByUs(star: (typeof stars)[number], form: MountForm): Vector3 {
  const circle = hourCircleOf(byTheLibrary(star, right), sky.latitudeDeg);
  const believed = believedSkyOf(form, truth);
  if (believed === null) throw new Error('not a date');
  return tubeSentTo(circle, believed, sky);
}

describe('where the tube goes with a wrong entry', () => {
  it.each<[string, Partial<MountForm>, number]>([
    ['summer time forgotten', { summerTime: false }, 0.1],
    ['the zone three hours off', { zoneMinutes: -120 }, 0.1],
    ['the morning for the evening', { hour: 10 }, 0.1],
    ['the day after', { day: 15 }, 0.1],
    ['east for west', { longitudeSide: 'W' }, 0.01],
    ['south for north', { latitudeSide: 'S' }, 0.01],
    ['the digits of the latitude exchanged', { latitudeDegrees: 5 }, 0.01],
    // Aberration comes and goes in a year, 20.5″ each way, and precession is 50″ a year.
    ['another month', { month: 2 }, 1.5],
    ['another year', { year: 2025 }, 1.5],
  ])('%s: as the ephemeris has it for what was entered', (_name, slip, withinArcmin) => {
    for (const star of stars) {
      const form = { ...right, ...slip };
      const apartArcmin = 60 * separationDeg(tubeByUs(star, form), byTheLibrary(star, form));
      expect(apartArcmin).toBeLessThan(withinArcmin);
    }
  });

  it('is that of the ephemeris for any place and hour entered', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -89 * 60, max: 89 * 60 }),
        fc.integer({ min: -179 * 60, max: 179 * 60 }),
        fc.integer({ min: 0, max: 23 }),
        fc.integer({ min: 13, max: 16 }),
        fc.constantFrom(...stars),
        (latitudeArcmin, longitudeArcmin, hour, day, star) => {
          const form = { ...right, hour, day, ...placeFields(latitudeArcmin, longitudeArcmin) };
          const apartDeg = separationDeg(tubeByUs(star, form), byTheLibrary(star, form));
          expect(apartDeg * 60).toBeLessThan(0.1);
        },
      ),
      { numRuns: 200 },
    );
  });
});

describe('the figures everybody should know', () => {
  const onTheEquator = { hourAngleDeg: -20, declinationDeg: 0 };
  const missOf = (slip: Partial<MountForm>): number => {
    const believed = believedSkyOf({ ...right, ...slip }, truth);
    if (believed === null) throw new Error('not a date');
    return missDeg(onTheEquator, believed, sky);
  };

  // Design, "Clock and place"; Meeus ch. 12.
  it('a forgotten summer hour is 15.04°, a day 0.986°, a minute a quarter of a degree', () => {
    expect(missOf({ summerTime: false })).toBeCloseTo(15.041, 3);
    expect(missOf({ day: 15 })).toBeCloseTo(0.9856, 3);
    expect(missOf({ minute: 31 })).toBeCloseTo(0.2507, 3);
  });

  it('east for west is twice the longitude, south for north twice the latitude at the meridian', () => {
    expect(missOf({ longitudeSide: 'W' })).toBeCloseTo(2 * (8 + 41 / 60), 9);
    const believed = believedSkyOf({ ...right, latitudeSide: 'S' }, truth);
    if (believed === null) throw new Error('not a date');
    const upright = { hourAngleDeg: 0, declinationDeg: 0 };
    expect(missDeg(upright, believed, sky)).toBeCloseTo(2 * (50 + 7 / 60), 9);
  });

  it('a star is back 3 min 56 s earlier the next day', () => {
    // 86 400 s − 86 164.0905 s = 235.9 s: the sidereal day, Explanatory Supplement.
    const believed = believedSkyOf({ ...right, day: 15, hour: 22, minute: 26 }, truth);
    if (believed === null) throw new Error('not a date');
    // Four minutes earlier by the clock, and 4.1 s of turn short of where it was.
    expect(believed.turnDeg * 240).toBeCloseTo(-4.1, 1);
  });

  it('the Moon runs half a degree an hour', () => {
    expect(moonRunsDeg(3_600_000)).toBeCloseTo(0.549, 3);
  });

  it('a compass at 80° N 0° E shows true north at 358.72° (WMM2025 test value, 2025.0: 1.28° east)', () => {
    const place = { latitudeDeg: 80, longitudeDeg: 0, elevationM: 0 };
    const found = declinationAt(place, '2025-01-01T00:00:00Z');
    if (!found.ok) throw new Error(found.reason);
    expect(compassBearingOfNorthDeg(found.declinationDeg)).toBeCloseTo(wrap360(-1.28), 1);
    expect(Math.abs(found.declinationDeg - 1.28)).toBeLessThan(0.006);
  });
});
