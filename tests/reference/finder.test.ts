import { describe, expect, it } from 'vitest';
import { dotResidualArcmin } from '@/lib/finder/dot-residual';
import { parallaxOf, sizeArcmin } from '@/lib/finder/sights';
import { leastSunDistanceDeg } from '@/lib/finder/way-past-sun';

/** Arcseconds in a radian, to six figures as in every textbook (Smart, *Spherical Astronomy*, ch. 1). */
const arcsecondsPerRadian = 206_265;

describe('what a near target leaves', () => {
  // The design's table, and the small-angle rule: size over distance, in radians.
  it.each([
    ['a fence', 8, '34'],
    ['a tree', 20, '13.8'],
    ['a chimney', 50, '5.5'],
    ['a mast', 300, '0.92'],
    ['a tower on a far hill', 2000, '0.14'],
  ])('%s %i m away, with the finder 80 mm beside the tube: %s′', (_, distanceM, told) => {
    const arcmin = dotResidualArcmin({ apartMm: 80, distanceM });
    const decimals = told.split('.')[1]?.length ?? 0;
    expect(arcmin.toFixed(decimals)).toBe(told);
    // The rule leaves out a third of the cube: 3 · 10⁻⁵ of it at 8 m.
    const byRule = ((0.08 / distanceM) * arcsecondsPerRadian) / 60;
    expect(Math.abs(arcmin / byRule - 1)).toBeLessThan(4e-5);
  });

  it('is the same wherever round the tube the finder sits', () => {
    for (const round of [-60, -30, 0, 30, 60, 90]) {
      const turn = (round * Math.PI) / 180;
      const finder = { rightMm: 80 * Math.sin(turn), upMm: 80 * Math.cos(turn) };
      const size = sizeArcmin(parallaxOf(finder, 20));
      // Two tangents against one: a millionth at this size.
      expect(size).toBeCloseTo(dotResidualArcmin({ apartMm: 80, distanceM: 20 }), 4);
    }
  });
});

describe('how near a way leads past the Sun', () => {
  // Right-angled spherical triangles, Napier's rules (Smart, ch. 1): sin d = sin ΔA · cos h for a way
  // straight up.
  it.each([
    { apartDeg: 20, sunDeg: 10, distanceDeg: 19.6835 },
    { apartDeg: 40, sunDeg: 20, distanceDeg: 37.1586 },
    { apartDeg: 60, sunDeg: 35, distanceDeg: 45.1866 },
  ])('straight up, $apartDeg° of azimuth beside a Sun $sunDeg° up: $distanceDeg°', (one) => {
    const from = { azimuthDeg: 180, altitudeDeg: -5 };
    const to = { azimuthDeg: 180, altitudeDeg: 85 };
    const sun = { azimuthDeg: 180 + one.apartDeg, altitudeDeg: one.sunDeg };
    const said = leastSunDistanceDeg(from, to, sun);
    expect(said).toBeLessThanOrEqual(one.distanceDeg + 5e-5);
    expect(said).toBeGreaterThan(one.distanceDeg - 0.0101);
  });
});
