import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wrap180 } from './angle';
import {
  azAltFromDirection,
  cross,
  directionFromAzAlt,
  dot,
  length,
  normalise,
  separationDeg,
} from './vector';

const azimuth = fc.double({ min: 0, max: 360, maxExcluded: true, noNaN: true });
const altitude = fc.double({ min: -90, max: 90, noNaN: true });
const direction = fc.tuple(azimuth, altitude).map(([a, h]) => directionFromAzAlt(a, h));

describe('directions', () => {
  it('north is y, east is x, up is z', () => {
    const near = (u: readonly number[], v: readonly number[]) => {
      u.forEach((value, i) => {
        expect(value).toBeCloseTo(v[i] ?? NaN, 15);
      });
    };
    near(directionFromAzAlt(0, 0), [0, 1, 0]);
    near(directionFromAzAlt(90, 0), [1, 0, 0]);
    near(directionFromAzAlt(123, 90), [0, 0, 1]);
  });

  it('come back as the azimuth and altitude they were made from', () => {
    fc.assert(
      fc.property(azimuth, fc.double({ min: -89, max: 89, noNaN: true }), (a, h) => {
        const back = azAltFromDirection(directionFromAzAlt(a, h));
        expect(wrap180(back.azimuthDeg - a)).toBeCloseTo(0, 10);
        expect(back.altitudeDeg).toBeCloseTo(h, 10);
        expect(back.azimuthDeg).toBeLessThan(360);
      }),
    );
  });

  it('have length one, and normalise refuses the zero vector', () => {
    fc.assert(
      fc.property(direction, (u) => {
        expect(length(u)).toBeCloseTo(1, 14);
      }),
    );
    expect(normalise([0, 0, -3])).toEqual([0, 0, -1]);
    expect(() => normalise([0, 0, 0])).toThrow(RangeError);
  });

  it('east crossed with north is up, and a cross product stands square on both', () => {
    expect(cross([1, 0, 0], [0, 1, 0])).toEqual([0, 0, 1]);
    fc.assert(
      fc.property(direction, direction, (u, v) => {
        expect(dot(cross(u, v), u)).toBeCloseTo(0, 14);
        expect(dot(cross(u, v), v)).toBeCloseTo(0, 14);
      }),
    );
  });
});

describe('separation', () => {
  it('is the same both ways, and the long way round adds up to 180°', () => {
    fc.assert(
      fc.property(direction, direction, (u, v) => {
        const there = separationDeg(u, v);
        expect(separationDeg(v, u)).toBe(there);
        expect(separationDeg(u, [-v[0], -v[1], -v[2]])).toBeCloseTo(180 - there, 10);
      }),
    );
  });

  it('resolves a milliarcsecond, where an arc cosine would read zero', () => {
    const milliarcsecond = 1 / 3_600_000;
    const apart = separationDeg(
      directionFromAzAlt(200, 0),
      directionFromAzAlt(200, milliarcsecond),
    );
    expect(apart / milliarcsecond).toBeCloseTo(1, 6);
  });

  // Spherical law of cosines by hand: 2 asin(cos a · sin 5°).
  it('10° of azimuth is 1.7343° at altitude 80° and 9.3955° at 20°', () => {
    const gap = (h: number) => separationDeg(directionFromAzAlt(40, h), directionFromAzAlt(50, h));
    expect(gap(80)).toBeCloseTo(1.7343, 4);
    expect(gap(20)).toBeCloseTo(9.3955, 4);
  });
});
