import fc from 'fast-check';
import { Spherical, Vector3 } from 'three';
import { expect, it } from 'vitest';
import { leastSunDistanceDeg, onTheWay, type AzAlt } from './way-past-sun';

const place = fc.record({
  azimuthDeg: fc.double({ min: 0, max: 359.999, noNaN: true }),
  altitudeDeg: fc.double({ min: -10, max: 85, noNaN: true }),
});
const sun = fc.record({
  azimuthDeg: fc.double({ min: 0, max: 359.999, noNaN: true }),
  altitudeDeg: fc.double({ min: -1, max: 89, noNaN: true }),
});

/** The same by a general 3D library, for comparison. */
const byThree = ({ azimuthDeg, altitudeDeg }: AzAlt): Vector3 =>
  new Vector3().setFromSpherical(
    new Spherical(1, ((90 - altitudeDeg) * Math.PI) / 180, (azimuthDeg * Math.PI) / 180),
  );

it('a way is never nearer to the Sun anywhere than what is said of it, nor is too little said', () => {
  fc.assert(
    fc.property(place, place, sun, (from, to, at) => {
      const said = leastSunDistanceDeg(from, to, at);
      const toSun = byThree(at);
      let nearest = Infinity;
      for (let step = 0; step <= 4000; step += 1) {
        const apart = byThree(onTheWay(from, to, step / 4000)).angleTo(toSun);
        nearest = Math.min(nearest, (apart * 180) / Math.PI);
      }
      // An arc cosine of a rounded cosine is good to 10⁻⁶ degree; 4000 looks at 200° of way to 0.03°.
      expect(nearest).toBeGreaterThanOrEqual(said - 1e-5);
      expect(nearest - said).toBeLessThan(0.01 + 0.03);
    }),
    { numRuns: 150 },
  );
});

it('is the same there and back, and for standing still the distance itself', () => {
  fc.assert(
    fc.property(place, place, sun, (from, to, at) => {
      const back = leastSunDistanceDeg(to, from, at);
      expect(Math.abs(leastSunDistanceDeg(from, to, at) - back)).toBeLessThan(0.0101);
      const still = leastSunDistanceDeg(from, from, at);
      expect(still).toBeLessThanOrEqual(
        (byThree(from).angleTo(byThree(at)) * 180) / Math.PI + 1e-5,
      );
    }),
  );
});

// Along the level past a Sun 20° up: 20°. Straight up at 25° of azimuth from a Sun 40° up: Napier's
// rule for a right-angled triangle, sin d = sin 25° cos 40°, 18.8895°.
it.each([
  ['along the level below the Sun', [150, 0], [230, 0], [190, 20], 20],
  ['straight up beside the Sun', [165, 0], [165, 80], [190, 40], 18.8895],
  ['through north, the shorter way', [350, 10], [20, 10], [0, 10], 0],
] as const)('%s', (_, from, to, at, distanceDeg) => {
  const azAlt = ([azimuthDeg, altitudeDeg]: readonly [number, number]) => ({
    azimuthDeg,
    altitudeDeg,
  });
  const said = leastSunDistanceDeg(azAlt(from), azAlt(to), azAlt(at));
  expect(said).toBeLessThanOrEqual(distanceDeg + 1e-4);
  expect(said).toBeGreaterThan(distanceDeg - 0.0101);
});
