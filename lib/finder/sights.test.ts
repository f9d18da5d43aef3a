import fc from 'fast-check';
import { expect, it } from 'vitest';
import { dotResidualArcmin } from './dot-residual';
import {
  aimFromFinder,
  aimFromTube,
  minus,
  parallaxOf,
  plus,
  sizeArcmin,
  tubeMoved,
} from './sights';

// Design, "Finder", worked by hand from atan(b/D), b = 80 mm.
it.each([
  [50, 5.5],
  [300, 0.917],
  [20, 13.75],
  [8, 34.38],
])(
  'a finder 80 mm beside the tube sees a thing %i m away %f′ beside the tube',
  (distanceM, arcmin) => {
    const tube = { azimuthDeg: 140, altitudeDeg: 4 };
    const seen = aimFromFinder(tube, { ...tube, distanceM }, { rightMm: 48, upMm: 64 });
    expect(seen).not.toBeNull();
    if (seen !== null) expect(sizeArcmin(seen)).toBeCloseTo(arcmin, 2);
  },
);

it('a finder to the upper right sees a near thing to the lower left, and a star where it is', () => {
  const finder = { rightMm: 40, upMm: 69.28 };
  const near = parallaxOf(finder, 10);
  expect(near.rightArcmin).toBeLessThan(0);
  expect(near.upArcmin).toBeLessThan(near.rightArcmin);
  expect(parallaxOf(finder, null)).toEqual({ rightArcmin: 0, upArcmin: 0 });
});

it('set on a near thing exactly, the dot is beside the tube by the parallax; by as much more as the hand was off', () => {
  const off = fc.double({ min: -20, max: 20, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: 5, max: 3000, noNaN: true }), off, off, (distanceM, right, up) => {
      const aim = { azimuthDeg: 200, altitudeDeg: 6, distanceM };
      const finder = { rightMm: -40, upMm: 69.28 };
      const tube = tubeMoved(aim, { rightArcmin: -right, upArcmin: -up });
      const seen = aimFromFinder(tube, aim, finder);
      if (seen === null) throw new Error('not ahead');
      const rest = minus(seen, { rightArcmin: right, upArcmin: up });
      const apart = Math.hypot(finder.rightMm, finder.upMm);
      const parallax = dotResidualArcmin({ apartMm: apart, distanceM });
      // 20′ of a step that is reckoned flat are good to 0.01′; the two tangents of 34′ add less.
      expect(Math.abs(sizeArcmin(rest) - parallax)).toBeLessThan(0.02);
    }),
  );
});

it('moving the tube right and up leaves a thing to its left and below', () => {
  const tube = { azimuthDeg: 359.9, altitudeDeg: 30 };
  const moved = tubeMoved(tube, { rightArcmin: 12, upArcmin: 6 });
  const seen = aimFromTube(moved, tube);
  expect(moved.azimuthDeg).toBeLessThan(1);
  expect(seen?.rightArcmin).toBeCloseTo(-12, 1);
  expect(seen?.upArcmin).toBeCloseTo(-6, 1);
  expect(aimFromTube(tube, { azimuthDeg: 180, altitudeDeg: 5 })).toBeNull();
  expect(plus({ rightArcmin: 1, upArcmin: 2 }, { rightArcmin: 3, upArcmin: 5 })).toEqual({
    rightArcmin: 4,
    upArcmin: 7,
  });
});
