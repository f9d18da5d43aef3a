import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { fitRotation } from '@/lib/pointing/fit-rotation';
import { degreesToRadians } from '@/lib/units/angle';
import { angle, multiply, transform, transpose, type Matrix3 } from '@/lib/units/matrix';
import { directionFromAzAlt, normalise, separationDeg, type Vector3 } from '@/lib/units/vector';
import { randomFrom } from '@/lib/variants/random';
import { normalFrom } from '../support/normal';
import data from './data/rotation_fit.json';

const vector = z.tuple([z.number(), z.number(), z.number()]);
const cases = z
  .array(
    z.object({
      sky: z.array(vector).min(2),
      mount: z.array(vector).min(2),
      weights: z.array(z.number()),
      rotation: z.tuple([vector, vector, vector]),
      rootSumSquare: z.number(),
    }),
  )
  .length(12)
  .parse(data.cases);

function fitted(pairs: Parameters<typeof fitRotation>[0]): Matrix3 {
  const rotation = fitRotation(pairs);
  if (rotation === null) throw new Error('these pairs leave nothing open');
  return rotation;
}

// Computed apart from this code by SciPy's Rotation.align_vectors.
describe('weighted fits of two to four directions (rotation_fit.json)', () => {
  it.each(cases.map((c, i) => [i, c] as const))('case %i', (_, c) => {
    const pairs = c.sky.map((from, i) => ({
      from,
      to: c.mount[i] ?? from,
      weight: c.weights[i] ?? 0,
    }));
    const rotation = fitted(pairs);
    // Nine decimals in both frames, directions 60° apart or more: up to 1.7·10⁻⁹ · 2/sin 60° of a turn.
    rotation.forEach((value, i) => {
      expect(Math.abs(value - (c.rotation.flat()[i] ?? NaN))).toBeLessThan(5e-9);
    });
    const sumSquare = pairs.reduce((sum, { from, to, weight }) => {
      const turned = transform(rotation, from);
      return sum + weight * to.reduce((s, x, i) => s + (x - (turned[i] ?? 0)) ** 2, 0);
    }, 0);
    // SciPy takes the sum as a difference of numbers about 10, good to 10⁻¹⁴. Nine decimals in both
    // frames move a residual by up to 1.7·10⁻⁹, their weighted root sum (weights to 7) by 4.5·10⁻⁹.
    const printed = c.rootSumSquare ** 2;
    const tolerance = 1e-14 + 2 * c.rootSumSquare * 5e-9;
    expect(Math.abs(sumSquare - printed)).toBeLessThan(tolerance);
  });
});

// Hall 2003, Spacecraft Attitude Dynamics and Control, ch. 4, example of two sensors; from memory,
// recomputed. TRIAD (Shuster & Oh 1981) takes the first direction as exact.
describe('the textbook case of two directions', () => {
  const body = (
    [
      [0.8273, 0.5541, -0.092],
      [-0.8285, 0.5522, -0.0955],
    ] as const
  ).map(normalise);
  const inertial = (
    [
      [-0.1517, -0.9669, 0.205],
      [-0.8393, 0.4494, -0.3044],
    ] as const
  ).map(normalise);
  const weighing = (firstWeight: number): Matrix3 =>
    fitted(
      inertial.map((from, i) => ({
        from,
        to: body[i] ?? from,
        weight: i === 0 ? firstWeight : 1,
      })),
    );

  it('reads as printed when the first direction weighs all but everything, as in TRIAD', () => {
    const printed = [
      [0.4156, -0.8551, 0.31],
      [-0.8339, -0.4943, -0.2455],
      [0.3631, -0.1566, -0.9185],
    ].flat();
    weighing(1e8).forEach((value, i) => {
      expect(Math.abs(value - (printed[i] ?? NaN))).toBeLessThan(0.5e-4 + 1e-6);
    });
  });

  it('with equal weights the two share the mismatch of their angles half and half', () => {
    const between = ([u, v]: readonly Vector3[]): number =>
      u === undefined || v === undefined ? NaN : separationDeg(u, v);
    const mismatchDeg = Math.abs(between(body) - between(inertial));
    const turn = angle(multiply(weighing(1), transpose(weighing(1e8))));
    expect(mismatchDeg).toBeGreaterThan(0.04);
    // 10⁻⁸ of weight for the second direction moves the first by 5·10⁻¹⁰ degree.
    expect(turn).toBeCloseTo(mismatchDeg / 2, 7);
  });
});

// Shuster & Oh 1981, J. Guidance and Control 4, 70: covariance of QUEST for two directions of equal
// noise σ on each axis; its trace is σ²(½ + 2/sin²θ).
describe('the error of a rotation from two noisy directions', () => {
  const sigmaDeg = 0.05;
  const draws = 8000;

  it.each([15, 40, 65, 90, 130])('%i° apart', (apartDeg) => {
    const random = randomFrom(`two noisy directions ${String(apartDeg)}`);
    const normal = normalFrom(random);
    const noisy = ({ az, alt }: { az: number; alt: number }): Vector3 => {
      const u = directionFromAzAlt(az, alt);
      const right = directionFromAzAlt(az + 90, 0);
      const up = directionFromAzAlt(az, alt + 90);
      const [x, y] = [normal(), normal()].map((n) => n * degreesToRadians(sigmaDeg));
      const moved = (i: 0 | 1 | 2) => u[i] + (x ?? NaN) * right[i] + (y ?? NaN) * up[i];
      return normalise([moved(0), moved(1), moved(2)]);
    };
    const stars = [
      { az: 20, alt: 0 },
      { az: 20, alt: apartDeg },
    ];
    let sum = 0;
    let sumOfSquares = 0;
    for (let i = 0; i < draws; i++) {
      const rotation = fitted(
        stars.map((star) => ({
          from: directionFromAzAlt(star.az, star.alt),
          to: noisy(star),
          weight: 1,
        })),
      );
      const square = angle(rotation) ** 2;
      sum += square;
      sumOfSquares += square * square;
    }
    const mean = sum / draws;
    const standardError = Math.sqrt((sumOfSquares / draws - mean * mean) / draws);
    const closedForm = sigmaDeg ** 2 * (0.5 + 2 / Math.sin(degreesToRadians(apartDeg)) ** 2);
    // One in 16,000 means of a true formula strays by four standard errors, which are under 2 %.
    expect(standardError / closedForm).toBeLessThan(0.02);
    expect(Math.abs(mean - closedForm)).toBeLessThan(4 * standardError);
  });
});
