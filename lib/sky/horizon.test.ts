import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkHorizon, horizonAltitudeDeg, type SkylinePoint } from './horizon';

const points = (...pairs: [number, number][]): SkylinePoint[] =>
  pairs.map(([azimuthDeg, altitudeDeg]) => ({ azimuthDeg, altitudeDeg }));

describe('the skyline', () => {
  it('without points is level, with one point the same all round', () => {
    expect(horizonAltitudeDeg([], 123)).toBe(0);
    expect(horizonAltitudeDeg(points([90, 12]), 270)).toBe(12);
    expect(horizonAltitudeDeg(points([90, 12]), 90)).toBe(12);
  });

  it('goes straight from point to point', () => {
    const skyline = points([0, 0], [90, 18], [180, 0]);
    expect(horizonAltitudeDeg(skyline, 90)).toBe(18);
    expect(horizonAltitudeDeg(skyline, 45)).toBe(9);
    expect(horizonAltitudeDeg(skyline, 135)).toBe(9);
    expect(horizonAltitudeDeg(skyline, 270)).toBe(0);
  });

  it('goes straight across north', () => {
    const skyline = points([10, 20], [350, 0]);
    expect(horizonAltitudeDeg(skyline, 0)).toBe(10);
    expect(horizonAltitudeDeg(skyline, 355)).toBe(5);
    expect(horizonAltitudeDeg(skyline, 5)).toBe(15);
    expect(horizonAltitudeDeg(skyline, 365)).toBe(15);
    expect(horizonAltitudeDeg(skyline, 180)).toBeCloseTo(10, 12);
  });

  it('has no jumps, stays between its points, and does not care where the list begins', () => {
    const skyline = fc
      .uniqueArray(fc.integer({ min: 0, max: 359 }), { minLength: 1, maxLength: 20 })
      .chain((azimuths) =>
        fc
          .array(fc.integer({ min: 0, max: 60 }), {
            minLength: azimuths.length,
            maxLength: azimuths.length,
          })
          .map((altitudes) =>
            azimuths
              .sort((a, b) => a - b)
              .map((azimuthDeg, i) => ({ azimuthDeg, altitudeDeg: altitudes[i] ?? 0 })),
          ),
      );
    fc.assert(
      fc.property(
        skyline,
        fc.double({ min: 0, max: 360, noNaN: true }),
        fc.nat(19),
        (line, az, turn) => {
          const here = horizonAltitudeDeg(line, az);
          // Points are at least 1° apart and differ by at most 60°.
          expect(Math.abs(horizonAltitudeDeg(line, az + 1e-6) - here)).toBeLessThanOrEqual(6.1e-5);
          const altitudes = line.map((point) => point.altitudeDeg);
          expect(here).toBeGreaterThanOrEqual(Math.min(...altitudes) - 1e-9);
          expect(here).toBeLessThanOrEqual(Math.max(...altitudes) + 1e-9);
          const turned = [...line.slice(turn % line.length), ...line.slice(0, turn % line.length)];
          expect(horizonAltitudeDeg(turned, az)).toBe(here);
          expect(checkHorizon(turned)).toEqual({ ok: true });
        },
      ),
    );
  });
});

describe('a skyline that is refused', () => {
  const problem = (line: SkylinePoint[]) => {
    const check = checkHorizon(line);
    return check.ok ? null : [check.reason, check.index];
  };

  it('turns back: the point that lies behind is named', () => {
    expect(problem(points([10, 5], [90, 5], [80, 9], [200, 0]))).toEqual(['crosses-itself', 2]);
    expect(problem(points([300, 5], [20, 5], [310, 9]))).toEqual(['crosses-itself', 2]);
    expect(problem(points([200, 0], [100, 0], [50, 0]))).toEqual(['crosses-itself', 2]);
    const check = checkHorizon(points([10, 5], [90, 5], [80, 9]));
    expect(check.ok || check.message).toContain('Point 3 of the horizon (azimuth 80°)');
  });

  it('has two points at one azimuth', () => {
    expect(problem(points([10, 5], [90, 5], [90, 9]))).toEqual(['duplicate-azimuth', 2]);
    expect(problem(points([10, 5], [90, 5], [10, 9]))).toEqual(['duplicate-azimuth', 2]);
  });

  it('leaves the ranges', () => {
    expect(problem(points([360, 5]))).toEqual(['azimuth-out-of-range', 0]);
    expect(problem(points([NaN, 5]))).toEqual(['azimuth-out-of-range', 0]);
    expect(problem(points([0, 5], [20, -1]))).toEqual(['altitude-out-of-range', 1]);
    expect(problem(points([0, 91]))).toEqual(['altitude-out-of-range', 0]);
  });

  it('two points are always in order', () => {
    expect(problem(points([300, 5], [20, 5]))).toBeNull();
    expect(problem(points([20, 5], [300, 5]))).toBeNull();
  });
});
