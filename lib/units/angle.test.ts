import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  arcminutesToRadians,
  degreesToRadians,
  radiansToArcminutes,
  radiansToDegrees,
  wrap180,
  wrap360,
} from './angle';

const angle = fc.double({ min: -1e6, max: 1e6, noNaN: true });

describe('wrapping', () => {
  it('350° turned by 20° reads 10°', () => {
    expect(wrap360(350 + 20)).toBe(10);
  });

  it('10° turned back by 20° reads 350°, or −10° the shorter way', () => {
    expect(wrap360(10 - 20)).toBe(350);
    expect(wrap180(10 - 20)).toBe(-10);
  });

  it('half a turn is −180°, never +180°', () => {
    expect(wrap180(180)).toBe(-180);
    expect(wrap180(-180)).toBe(-180);
  });

  it('a hair below zero stays below 360°', () => {
    expect(wrap360(-1e-20)).toBe(0);
  });

  it('keeps every angle in its range and pointing the same way', () => {
    fc.assert(
      fc.property(angle, (value) => {
        const full = wrap360(value);
        const half = wrap180(value);
        expect(full).toBeGreaterThanOrEqual(0);
        expect(full).toBeLessThan(360);
        expect(half).toBeGreaterThanOrEqual(-180);
        expect(half).toBeLessThan(180);
        // A million degrees carry a rounding error of 10⁻¹⁰ degree.
        const chord = (a: number, b: number) => Math.abs(Math.sin(degreesToRadians(a - b) / 2));
        expect(chord(full, value)).toBeLessThan(1e-9);
        expect(chord(half, value)).toBeLessThan(1e-9);
      }),
    );
  });
});

describe('conversion', () => {
  it('a half turn is π, and an arcminute a sixtieth of a degree', () => {
    expect(degreesToRadians(180)).toBe(Math.PI);
    expect(arcminutesToRadians(60)).toBe(degreesToRadians(1));
  });

  it('has its inverse', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e4, max: 1e4, noNaN: true }), (value) => {
        expect(radiansToDegrees(degreesToRadians(value))).toBeCloseTo(value, 10);
        expect(radiansToArcminutes(arcminutesToRadians(value))).toBeCloseTo(value, 10);
      }),
    );
  });
});
