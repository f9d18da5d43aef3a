import { describe, expect, it } from 'vitest';
import { declinationAt } from './declination';

const at = (latitudeDeg: number, longitudeDeg: number, instant = '2025-01-01T00:00:00Z') => {
  const found = declinationAt({ latitudeDeg, longitudeDeg, elevationM: 0 }, instant);
  if (!found.ok) throw new Error(found.reason);
  return found.declinationDeg;
};

describe('the compass', () => {
  // Test values published with the World Magnetic Model 2025, date 2025.0, height 0 km, to 0.01°.
  // The first stands in the design; the others from memory of the same table.
  it.each([
    [80, 0, 1.28],
    [0, 120, -0.16],
    [-80, 240, 68.78],
  ])('at %f° N, %f° E stood %f° east of north at 2025.0', (latitudeDeg, longitudeDeg, expected) => {
    expect(Math.abs(at(latitudeDeg, longitudeDeg) - expected)).toBeLessThan(0.006);
  });

  it('knows nothing of years that no model reaches', () => {
    const place = { latitudeDeg: 50, longitudeDeg: 8, elevationM: 0 };
    expect(declinationAt(place, '2029-11-20T00:00:00Z')).toMatchObject({
      ok: false,
      reason: 'outside-the-model',
    });
    expect(declinationAt(place, '2001-01-01T00:00:00Z').ok).toBe(false);
    expect(declinationAt(place, '2029-11-12T00:00:00Z').ok).toBe(true);
    expect(declinationAt(place, '2021-06-01T00:00:00Z').ok).toBe(true);
  });

  it('is asked for an instant', () => {
    expect(() => declinationAt({ latitudeDeg: 0, longitudeDeg: 0, elevationM: 0 }, 'soon')).toThrow(
      RangeError,
    );
  });
});
