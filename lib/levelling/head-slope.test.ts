import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { degreesToRadians, wrap180 } from '../units/angle';
import { headSlope, tiltOf, type CarriedHeight } from './head-slope';

const height = fc.double({ min: -80, max: 80, noNaN: true });
const azimuth = fc.double({ min: 0, max: 360, noNaN: true });
const feet = (turnDeg: number, [a, b, c]: [number, number, number]): CarriedHeight[] =>
  [a, b, c].map((heightMm, leg) => ({ azimuthDeg: turnDeg + 120 * leg, heightMm }));
const threeHeights = fc.tuple(height, height, height);

describe('the head on three feet', () => {
  it('10 mm under one leg on a circle of 0.45 m is 0.849°, rising towards that leg', () => {
    // Design, "Levelling": the triangle of feet is 1.5 r high, atan(0.01/0.675).
    const tilt = tiltOf(headSlope(450, feet(40, [10, 0, 0])));
    expect(tilt.tiltDeg).toBeCloseTo(0.8488, 4);
    expect(tilt.risesTowardsDeg).toBeCloseTo(40, 9);
  });

  it('is level when all three carry equally high, however high', () => {
    fc.assert(
      fc.property(azimuth, height, (turn, h) => {
        expect(tiltOf(headSlope(450, feet(turn, [h, h, h]))).tiltDeg).toBeLessThan(1e-10);
      }),
    );
  });

  it('raising all legs alike changes nothing', () => {
    fc.assert(
      fc.property(azimuth, threeHeights, height, (turn, [a, b, c], more) => {
        const before = headSlope(450, feet(turn, [a, b, c]));
        const after = headSlope(450, feet(turn, [a + more, b + more, c + more]));
        expect(after.east).toBeCloseTo(before.east, 12);
        expect(after.north).toBeCloseTo(before.north, 12);
      }),
    );
  });

  it('rotating the tripod rotates the tilt', () => {
    fc.assert(
      fc.property(azimuth, azimuth, threeHeights, (turn, by, heights) => {
        const before = tiltOf(headSlope(450, feet(turn, heights)));
        const after = tiltOf(headSlope(450, feet(turn + by, heights)));
        fc.pre(before.tiltDeg > 1e-4);
        expect(after.tiltDeg).toBeCloseTo(before.tiltDeg, 9);
        expect(Math.abs(wrap180(after.risesTowardsDeg - before.risesTowardsDeg - by))).toBeLessThan(
          1e-6,
        );
      }),
    );
  });

  it('agrees with the closed form for legs 120° apart', () => {
    fc.assert(
      fc.property(azimuth, threeHeights, (turn, heights) => {
        const stand = feet(turn, heights);
        const sum = (part: (angle: number) => number) =>
          (2 / (3 * 450)) *
          stand.reduce((all, f) => all + f.heightMm * part(degreesToRadians(f.azimuthDeg)), 0);
        const slope = headSlope(450, stand);
        expect(slope.east).toBeCloseTo(sum(Math.sin), 12);
        expect(slope.north).toBeCloseTo(sum(Math.cos), 12);
      }),
    );
  });

  it('is carried through each foot exactly, also where the legs stand at uneven angles', () => {
    fc.assert(
      fc.property(threeHeights, fc.double({ min: 50, max: 160, noNaN: true }), (heights, apart) => {
        const stand = heights.map((heightMm, leg) => ({ azimuthDeg: leg * apart, heightMm }));
        const { east, north } = headSlope(450, stand);
        const middles = stand.map(
          ({ azimuthDeg, heightMm }) =>
            heightMm -
            450 *
              (east * Math.sin(degreesToRadians(azimuthDeg)) +
                north * Math.cos(degreesToRadians(azimuthDeg))),
        );
        expect(Math.max(...middles) - Math.min(...middles)).toBeLessThan(1e-9);
      }),
    );
  });

  it('throws where the feet stand in a line', () => {
    const inALine = [0, 180, 180].map((azimuthDeg, heightMm) => ({ azimuthDeg, heightMm }));
    expect(() => headSlope(450, inALine)).toThrow(RangeError);
  });
});
