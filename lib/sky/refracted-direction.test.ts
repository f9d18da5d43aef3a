import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { directionFromAzAlt, separationDeg } from '../units/vector';
import { refracted, unrefracted } from './refracted-direction';
import { refractionDeg } from './refraction';

describe('refraction of a direction', () => {
  it('lifts along the vertical circle by what the formula says', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 359.9, noNaN: true }),
        fc.double({ min: -60, max: 89.9, noNaN: true }),
        fc.double({ min: 0, max: 1.3, noNaN: true }),
        (azimuthDeg, altitudeDeg, scale) => {
          const lifted = refracted(directionFromAzAlt(azimuthDeg, altitudeDeg), scale);
          const expected = directionFromAzAlt(
            azimuthDeg,
            altitudeDeg + refractionDeg(altitudeDeg, scale),
          );
          expect(separationDeg(lifted, expected)).toBeLessThan(1e-9);
        },
      ),
    );
  });

  it('is undone by its inverse from 1° below the horizon to the zenith', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 359.9, noNaN: true }),
        fc.double({ min: -1, max: 90, noNaN: true }),
        fc.double({ min: 0, max: 1.3, noNaN: true }),
        (azimuthDeg, altitudeDeg, scale) => {
          const direction = directionFromAzAlt(azimuthDeg, altitudeDeg);
          const back = unrefracted(refracted(direction, scale), scale);
          expect(separationDeg(back, direction)).toBeLessThan(1e-8);
        },
      ),
    );
  });
});
