import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aboutAxis, angle, multiply, transform, transpose } from '../units/matrix';
import { directionFromAzAlt, separationDeg, type Vector3 } from '../units/vector';
import { fitRotation } from './fit-rotation';

const direction = fc
  .tuple(
    fc.double({ min: 0, max: 360, noNaN: true }),
    fc.double({ min: -90, max: 90, noNaN: true }),
  )
  .map(([azimuth, altitude]) => directionFromAzAlt(azimuth, altitude));
const rotation = fc
  .tuple(direction, fc.double({ min: 0, max: 180, noNaN: true }))
  .map(([axis, deg]) => aboutAxis(axis, deg));
const weight = fc.double({ min: 0.1, max: 10, noNaN: true });
const star = fc.tuple(direction, weight);

const apart = (u: Vector3, v: Vector3): boolean =>
  separationDeg(u, v) > 1 && separationDeg(u, v) < 179;

describe('the rotation between two frames', () => {
  it('is found again from two or more exact directions, whatever they weigh', () => {
    fc.assert(
      fc.property(
        rotation,
        star,
        star,
        fc.array(star, { maxLength: 3 }),
        (r, first, second, more) => {
          fc.pre(apart(first[0], second[0]));
          const fitted = fitRotation(
            [first, second, ...more].map(([from, w]) => ({
              from,
              to: transform(r, from),
              weight: w,
            })),
          );
          // Directions 1° apart fix the last turn by the square of 1/57 only.
          expect(angle(multiply(fitted ?? r, transpose(r)))).toBeLessThan(1e-9);
          expect(fitted).not.toBeNull();
        },
      ),
    );
  });

  it('costs least: any small turn of it costs more', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(direction, direction, weight), { minLength: 3, maxLength: 5 }),
        direction,
        (raw, axis) => {
          const pairs = raw.map(([from, to, w]) => ({ from, to, weight: w }));
          const fitted = fitRotation(pairs);
          // Edge cases draw the same direction three times, which leaves a turn open.
          if (fitted === null) return;
          const cost = (r: typeof fitted): number =>
            pairs.reduce((sum, { from, to, weight: w }) => {
              const turned = transform(r, from);
              return sum + w * to.reduce((s, x, i) => s + (x - (turned[i] ?? 0)) ** 2, 0);
            }, 0);
          const least = cost(fitted);
          for (const turn of [-30, -1, 1, 30]) {
            expect(cost(multiply(aboutAxis(axis, turn), fitted))).toBeGreaterThan(least - 1e-12);
          }
        },
      ),
    );
  });

  it('stays open with no pair, one, the same twice, or two opposite ones', () => {
    const u = directionFromAzAlt(120, 35);
    const opposite: Vector3 = [-u[0], -u[1], -u[2]];
    const pair = (from: Vector3) => ({ from, to: from, weight: 1 });
    expect(fitRotation([])).toBeNull();
    expect(fitRotation([pair(u)])).toBeNull();
    expect(fitRotation([pair(u), pair(u)])).toBeNull();
    expect(fitRotation([pair(u), pair(opposite)])).toBeNull();
  });

  it('stays open for three directions seen in a mirror with equal weights', () => {
    const axes: Vector3[] = [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ];
    const mirrored = axes.map((from): { from: Vector3; to: Vector3; weight: number } => ({
      from,
      to: [-from[0], -from[1], -from[2]],
      weight: 1,
    }));
    expect(fitRotation(mirrored)).toBeNull();
  });
});
