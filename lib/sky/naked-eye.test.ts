import { describe, expect, it } from 'vitest';
import { moonlightLossMagnitudes, nakedEyeLimit, twilightLossMagnitudes } from './naked-eye';

const dark = {
  darkestLimitMagnitude: 6,
  sunAltitudeDeg: -30,
  moonAltitudeDeg: -10,
  moonIlluminatedFraction: 1,
};

// The approximation has no source; these are its defining points.
describe('the naked-eye limit', () => {
  it('on a dark night with the Moon down is what the site allows', () => {
    expect(nakedEyeLimit(dark)).toBe(6);
  });

  it.each([
    [-18, 0],
    [-15, 0.4],
    [-12, 0.8],
    [-9, 2],
    [-7.5, 3],
    [-6, 4],
    [-3, 6.5],
    [0, 9],
    [40, 9],
  ])('with the Sun at %d° loses %d magnitudes', (sunAltitudeDeg, loss) => {
    expect(twilightLossMagnitudes(sunAltitudeDeg)).toBeCloseTo(loss, 12);
    expect(nakedEyeLimit({ ...dark, sunAltitudeDeg })).toBeCloseTo(6 - loss, 12);
  });

  it('with a full Moon overhead loses 2 magnitudes, with a half Moon half a magnitude', () => {
    expect(moonlightLossMagnitudes(90, 1)).toBe(2);
    expect(moonlightLossMagnitudes(90, 0.5)).toBe(0.5);
    expect(moonlightLossMagnitudes(30, 1)).toBeCloseTo(2 * Math.SQRT1_2, 12);
    expect(moonlightLossMagnitudes(0, 1)).toBe(0);
  });

  it('loses to twilight and moonlight together', () => {
    expect(nakedEyeLimit({ ...dark, sunAltitudeDeg: -12, moonAltitudeDeg: 90 })).toBeCloseTo(
      3.2,
      12,
    );
  });
});
