import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wrap180 } from '../units/angle';
import { directionFromAzAlt, length, separationDeg } from '../units/vector';
import { mountDirection, readingsOf } from './mount';

const upTo = (limit: number) => fc.double({ min: -limit, max: limit, noNaN: true });
const errorsUpTo = (limitDeg: number) =>
  fc.record({
    altitudeZeroDeg: upTo(limitDeg),
    coneDeg: upTo(limitDeg),
    axisSkewDeg: upTo(limitDeg),
  });
const azimuth = fc.double({ min: 0, max: 360, maxExcluded: true, noNaN: true });
const none = { altitudeZeroDeg: 0, coneDeg: 0, axisSkewDeg: 0 };

describe('a mount without errors', () => {
  it('points where it reads', () => {
    fc.assert(
      fc.property(azimuth, upTo(90), (azimuthDeg, altitudeDeg) => {
        const u = mountDirection({ azimuthDeg, altitudeDeg }, none);
        expect(separationDeg(u, directionFromAzAlt(azimuthDeg, altitudeDeg))).toBeLessThan(1e-12);
      }),
    );
  });

  it('reaches its own pole at any azimuth, and names 0°', () => {
    expect(readingsOf([0, 0, 1], none)).toEqual({ azimuthDeg: 0, altitudeDeg: 90 });
  });
});

// To first order: design, mechanics of the mount (zero in altitude, cone across, skew across by sin a).
describe('each error by itself moves the tube', () => {
  it.each([
    ['the zero, upward', { ...none, altitudeZeroDeg: 0.5 }, 0, 0.5],
    ['the cone, to the right by its own size', { ...none, coneDeg: 0.5 }, 0.5, 0],
    ['the skew, to the right by its size times sin 40°', { ...none, axisSkewDeg: 0.5 }, 0.3214, 0],
  ])('%s', (_, errors, rightDeg, upDeg) => {
    const u = mountDirection({ azimuthDeg: 70, altitudeDeg: 40 }, errors);
    const at = directionFromAzAlt(70, 40);
    const right = directionFromAzAlt(160, 0);
    const up = directionFromAzAlt(70, 130);
    const along = (axis: readonly number[]) =>
      (axis.reduce((sum, x, i) => sum + x * ((u[i] ?? 0) - (at[i] ?? 0)), 0) * 180) / Math.PI;
    // Second order: half of (0.5°)² tan a is 0.002°.
    expect(Math.abs(along(right) - rightDeg)).toBeLessThan(0.003);
    expect(Math.abs(along(up) - upDeg)).toBeLessThan(0.003);
  });
});

describe('readings and direction', () => {
  it('are each other’s inverse for any errors up to 5°', () => {
    fc.assert(
      fc.property(azimuth, upTo(89.9), errorsUpTo(5), (azimuthDeg, trueAltitude, errors) => {
        const altitudeDeg = trueAltitude - errors.altitudeZeroDeg;
        const u = mountDirection({ azimuthDeg, altitudeDeg }, errors);
        expect(length(u)).toBeCloseTo(1, 12);
        const back = readingsOf(u, errors);
        // Within 0.1° of the end of the reach rounding counts up to 600 times.
        expect(Math.abs(wrap180((back?.azimuthDeg ?? NaN) - azimuthDeg))).toBeLessThan(1e-9);
        expect(Math.abs((back?.altitudeDeg ?? NaN) - altitudeDeg)).toBeLessThan(1e-9);
        expect(back?.azimuthDeg).toBeLessThan(360);
      }),
    );
  });

  it('agree at the very end of the reach to what a square root leaves of rounding', () => {
    fc.assert(
      fc.property(azimuth, fc.constantFrom(-90, 90), errorsUpTo(5), (azimuthDeg, end, errors) => {
        const u = mountDirection({ azimuthDeg, altitudeDeg: end - errors.altitudeZeroDeg }, errors);
        const back = readingsOf(u, errors);
        if (back === null) throw new Error('the end of the reach is within reach');
        // √10⁻¹⁵ = 3·10⁻⁸ = 2·10⁻⁶ degree: a hundredth of an arcsecond.
        expect(separationDeg(mountDirection(back, errors), u)).toBeLessThan(2e-6);
      }),
    );
  });

  it('no reading reaches within the cone error of the pole, and one does just outside', () => {
    const errors = { ...none, coneDeg: 1 };
    expect(readingsOf(directionFromAzAlt(30, 89.01), errors)).toBeNull();
    expect(readingsOf(directionFromAzAlt(30, -89.01), errors)).toBeNull();
    const outside = directionFromAzAlt(30, 88.99);
    const readings = readingsOf(outside, errors);
    if (readings === null) throw new Error('88.99° is within reach');
    expect(separationDeg(mountDirection(readings, errors), outside)).toBeLessThan(1e-10);
  });

  it('skew and cone add up at the pole, or cancel', () => {
    const near = directionFromAzAlt(200, 88.5);
    expect(readingsOf(near, { altitudeZeroDeg: 0, coneDeg: 1, axisSkewDeg: 1 })).toBeNull();
    expect(readingsOf(near, { altitudeZeroDeg: 0, coneDeg: 1, axisSkewDeg: -1 })).not.toBeNull();
    expect(
      readingsOf([0, 0, 1], { altitudeZeroDeg: 0, coneDeg: 1, axisSkewDeg: -1 }),
    ).not.toBeNull();
  });
});
