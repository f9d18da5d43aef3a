import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wrap180 } from '../units/angle';
import { directionFromAzAlt, dot, separationDeg } from '../units/vector';
import { believedSkyOf, leanDeg, missDeg, seenAt, tubeSentTo } from './believed-place';
import { directionOnHourCircle, hourCircleOf } from './hour-angle';
import { placeFields, type MountForm } from './mount-form';
import { compassBearingOfNorthDeg, startErrorDeg } from './needle';
import { causesOf, rootMeanSquare, splitMiss } from './split-by-cause';

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
const sky = { latitudeDeg: 50 + 7 / 60, refractionScale: 1 };
const star = fc.record({
  hourAngleDeg: fc.double({ min: -90, max: 90, noNaN: true }),
  declinationDeg: fc.double({ min: -20, max: 80, noNaN: true }),
});
const believe = (slip: Partial<MountForm>, startDeg = 0) => {
  const believed = believedSkyOf({ ...right, ...slip }, { ...truth, startDeg });
  if (believed === null) throw new Error('not a date');
  return believed;
};

describe('hour angle and declination', () => {
  it('come back as the direction they were taken from, at any latitude', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 360, noNaN: true }),
        fc.double({ min: -89, max: 89, noNaN: true }),
        fc.double({ min: -90, max: 90, noNaN: true }),
        (azimuthDeg, altitudeDeg, latitudeDeg) => {
          const u = directionFromAzAlt(azimuthDeg, altitudeDeg);
          const back = directionOnHourCircle(hourCircleOf(u, latitudeDeg), latitudeDeg);
          expect(separationDeg(u, back)).toBeCloseTo(0, 9);
        },
      ),
    );
  });

  it('of due south on the meridian are 0° and the height above the equator’s lowest reach', () => {
    const circle = hourCircleOf(directionFromAzAlt(180, 40), 50);
    expect(circle.hourAngleDeg).toBeCloseTo(0, 12);
    expect(circle.declinationDeg).toBeCloseTo(0, 12);
    // Six hours later it sets due west.
    const west = directionOnHourCircle({ hourAngleDeg: 90, declinationDeg: 0 }, 50);
    expect(separationDeg(west, directionFromAzAlt(270, 0))).toBeCloseTo(0, 9);
  });
});

describe('the sky that a mount believes in', () => {
  it('is the real one with the right form', () => {
    fc.assert(
      fc.property(star, (one) => {
        expect(missDeg(one, believe({}), sky)).toBe(0);
      }),
    );
  });

  it('is turned westward by a clock that is ahead and by a longitude too far east', () => {
    expect(believe({ summerTime: false }).turnDeg).toBeCloseTo(15.041, 3);
    expect(believe({ longitudeDegrees: 18 }).turnDeg).toBeCloseTo(10, 9);
    expect(believe({ hour: 21 }).turnDeg).toBeCloseTo(-15.041, 3);
  });

  it('never misses a star by more than it is turned, and the pole not at all', () => {
    fc.assert(
      fc.property(star, fc.integer({ min: 0, max: 23 }), (one, hour) => {
        const believed = believe({ hour });
        // Refraction lifts the two places differently: half a degree at the horizon.
        expect(missDeg(one, believed, { ...sky, refractionScale: 0 })).toBeLessThanOrEqual(
          Math.abs(believed.turnDeg) + 1e-9,
        );
        const pole = { hourAngleDeg: 0, declinationDeg: 90 };
        expect(missDeg(pole, believed, sky)).toBeCloseTo(0, 9);
      }),
    );
  });

  it('carries the needle’s error all round: 10° of it are 10° at the horizon and less higher up', () => {
    const believed = believe({}, 10);
    const low = hourCircleOf(directionFromAzAlt(180, 1), sky.latitudeDeg);
    const high = hourCircleOf(directionFromAzAlt(180, 80), sky.latitudeDeg);
    const bare = { ...sky, refractionScale: 0 };
    expect(missDeg(low, believed, bare)).toBeCloseTo(10, 2);
    // Design, "Numeric bands": 10° of azimuth is 1.7343° at altitude 80°.
    expect(missDeg(high, believed, bare)).toBeCloseTo(1.7343, 4);
    expect(dot(tubeSentTo(low, believed, bare), seenAt(low, bare))).toBeLessThan(1);
  });

  it('leans as far as the zenith would have to move', () => {
    expect(leanDeg(believe({ latitudeDegrees: 40 }), sky)).toBeCloseTo(10, 9);
    // A turn by t about a pole 90° − φ from the zenith: 2 asin(cos φ sin t/2), by hand.
    const t = (15.041_068_64 * Math.PI) / 180;
    const phi = (sky.latitudeDeg * Math.PI) / 180;
    const expected = (2 * Math.asin(Math.cos(phi) * Math.sin(t / 2)) * 180) / Math.PI;
    expect(leanDeg(believe({ summerTime: false }), sky)).toBeCloseTo(expected, 6);
  });
});

describe('the split of a miss', () => {
  const split = (
    slip: Partial<MountForm>,
    startDeg: number,
    one: Parameters<typeof splitMiss>[0],
  ) =>
    splitMiss(
      one,
      believe(slip, startDeg),
      causesOf({ ...right, ...slip }, { ...truth, startDeg }),
      sky,
    );

  it('gives one cause the whole of it', () => {
    const only = split({ summerTime: false }, 0, { hourAngleDeg: 20, declinationDeg: 10 });
    expect(only.shares.map(({ cause }) => cause)).toEqual(['summer-time']);
    expect(only.shares[0]?.deg).toBeCloseTo(only.missDeg, 9);
    expect(only.togetherDeg).toBeCloseTo(0, 9);
  });

  it('sums to the miss, and leaves under a tenth of it over when every slip is under a degree', () => {
    fc.assert(
      fc.property(
        star,
        fc.integer({ min: -3, max: 3 }),
        fc.integer({ min: -50, max: 50 }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        (one, minutes, arcmin, startDeg) => {
          const slip = {
            minute: 30 + minutes,
            ...placeFields(50 * 60 + 7 + arcmin, 8 * 60 + 41 - arcmin),
          };
          const { missDeg: miss, shares, togetherDeg } = split(slip, startDeg, one);
          const sum = shares.reduce((total, { deg }) => total + deg, togetherDeg);
          expect(sum).toBeCloseTo(miss, 9);
          // Where the slips all but cancel there is next to no miss to take a tenth of.
          if (miss > 0.3) expect(Math.abs(togetherDeg)).toBeLessThan(0.1 * miss);
        },
      ),
    );
  });

  it('of nothing wrong is nothing', () => {
    expect(split({}, 0, { hourAngleDeg: 5, declinationDeg: 40 })).toEqual({
      missDeg: 0,
      shares: [],
      togetherDeg: 0,
    });
    expect(rootMeanSquare([])).toBe(0);
    expect(rootMeanSquare([3, 4, 0, 0])).toBe(2.5);
  });
});

describe('the needle', () => {
  it('shows true north at 351° where it points 9° east of it', () => {
    expect(compassBearingOfNorthDeg(9)).toBe(351);
    expect(startErrorDeg(351, 9)).toBe(0);
    expect(startErrorDeg(0, 9)).toBe(9);
    // The wrong way round doubles it.
    expect(startErrorDeg(9, 9)).toBe(18);
  });

  it('is put right by the same figure everywhere', () => {
    fc.assert(
      fc.property(fc.double({ min: -60, max: 60, noNaN: true }), (declinationDeg) => {
        const bearing = compassBearingOfNorthDeg(declinationDeg);
        expect(wrap180(startErrorDeg(bearing, declinationDeg))).toBeCloseTo(0, 9);
      }),
    );
  });
});
