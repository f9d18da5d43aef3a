import { describe, expect, it } from 'vitest';
import { airmass, seenAsMagnitude } from './extinction';

describe('air mass', () => {
  // Kasten & Young 1989, Applied Optics 28, 4735, eq. 3. The values at 0.1°, 10° and 90° are those that
  // the tests of pvlib (BSD licence) hold its own version to; 0° and 30° as quoted from the paper.
  it.each([
    [90, 1.0, 3],
    [30, 1.99, 2],
    [10, 5.586, 3],
    [0.1, 36.467, 3],
    [0, 37.92, 2],
  ])('at %d° is %d', (altitudeDeg, expected, digits) => {
    expect(airmass(altitudeDeg)).toBeCloseTo(expected, digits);
  });

  it('falls all the way from the horizon to the zenith', () => {
    for (let h = 0; h < 90; h += 0.25) expect(airmass(h + 0.25)).toBeLessThan(airmass(h));
  });

  it('below the horizon stays as at the horizon', () => {
    expect(airmass(-30)).toBe(airmass(0));
  });
});

describe('the magnitude a star looks', () => {
  it('at the zenith is its own, to a thousandth', () => {
    expect(seenAsMagnitude(2, 0.25, 90)).toBeCloseTo(2, 3);
  });

  it('at 30° is one air mass of extinction fainter', () => {
    expect(seenAsMagnitude(2, 0.25, 30)).toBeCloseTo(2 + 0.25 * 0.99, 2);
  });
});
