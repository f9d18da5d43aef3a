import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { angleFromAxisDeg } from './angle-table';

const exact = (along: number, across: number) => Math.atan2(across, along) * (180 / Math.PI);

describe('the angle from an axis', () => {
  it('is 0° along it, 90° across it, 180° against it', () => {
    expect(angleFromAxisDeg(1, 0, 1)).toBe(0);
    expect(angleFromAxisDeg(0, 1, 1)).toBe(90);
    expect(angleFromAxisDeg(-1, 0, 1)).toBe(180);
    expect(angleFromAxisDeg(0, 0, 0)).toBe(0);
  });

  it('agrees with atan2 in every direction, whatever the length', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: Math.PI, noNaN: true }),
        fc.double({ min: 1e-6, max: 1e3, noNaN: true }),
        (angle, size) => {
          const along = size * Math.cos(angle);
          const across = Math.abs(size * Math.sin(angle));
          const difference =
            angleFromAxisDeg(along, across, Math.hypot(along, across)) - exact(along, across);
          expect(Math.abs(difference)).toBeLessThan(2e-13);
        },
      ),
      { numRuns: 5000 },
    );
  });

  it('agrees with atan2 on both sides of every seam of its table', () => {
    for (let cell = 0; cell < 256; cell += 1) {
      for (const hair of [-1e-9, 1e-9]) {
        const along = 1 - (cell + 0.5 + hair) / 128;
        const across = 1 - Math.abs(along);
        const difference =
          angleFromAxisDeg(along, across, Math.hypot(along, across)) - exact(along, across);
        expect(Math.abs(difference)).toBeLessThan(2e-13);
      }
    }
  });
});
