import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  apparentToTrueRefractionDeg,
  refractionDeg,
  refractionOfDirectionDeg,
  refractionScale,
} from './refraction';

const arcsecond = 1 / 3600;

describe('refraction', () => {
  // Meeus, Astronomical Algorithms 2nd ed., example 16.a: the Sun's lower limb at apparent 0° 30′.
  it('is 28.754′ at an apparent altitude of 0.5°', () => {
    expect(apparentToTrueRefractionDeg(0.5) * 60).toBeCloseTo(28.754, 3);
  });

  // The same example goes back by the other formula and finds 24.618′ (true altitude 33′ − 28.754′ + 32′
  // is its upper limb: 0° 33.246′ true).
  it('is 24.618′ at a true altitude of 33.246′', () => {
    expect(refractionDeg(33.246 / 60) * 60).toBeCloseTo(24.618, 2);
  });

  // Meeus p. 106: the two formulas are consistent to within 4″.
  it('is undone by its inverse to 4″ from the horizon up', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 89.9, noNaN: true }), (trueAltitudeDeg) => {
        const apparent = trueAltitudeDeg + refractionDeg(trueAltitudeDeg);
        const back = apparent - apparentToTrueRefractionDeg(apparent);
        expect(Math.abs(back - trueAltitudeDeg)).toBeLessThan(4 * arcsecond);
      }),
      { numRuns: 2000 },
    );
  });

  it('lifts the whole sky without folding it: a higher star stays higher', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -5, max: 89, noNaN: true }),
        fc.double({ min: 0.001, max: 1, noNaN: true }),
        (low, step) => {
          expect(low + step + refractionDeg(low + step)).toBeGreaterThan(low + refractionDeg(low));
        },
      ),
    );
  });

  it('is held at its value at −1° below that', () => {
    expect(refractionDeg(-40)).toBe(refractionDeg(-1));
    expect(apparentToTrueRefractionDeg(-40)).toBe(apparentToTrueRefractionDeg(-1));
  });

  it('grows with pressure and shrinks with warmth', () => {
    expect(refractionScale(1010, 10)).toBe(1);
    expect(refractionScale(505, 10)).toBe(0.5);
    expect(refractionScale(1010, 293)).toBeCloseTo(0.5, 15);
    expect(refractionDeg(20, 0.5)).toBeCloseTo(refractionDeg(20) / 2, 15);
  });

  it('is the same from sine and cosine, to 10⁻⁸ degree, above and below the horizon', () => {
    fc.assert(
      fc.property(fc.double({ min: -90, max: 90, noNaN: true }), (altitudeDeg) => {
        const radians = (altitudeDeg * Math.PI) / 180;
        const quick = refractionOfDirectionDeg(
          altitudeDeg,
          Math.sin(radians),
          Math.cos(radians),
          0.9,
        );
        expect(Math.abs(quick - refractionDeg(altitudeDeg, 0.9))).toBeLessThan(1e-8);
      }),
      { numRuns: 2000 },
    );
  });
});
