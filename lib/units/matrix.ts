import { degreesToRadians, radiansToDegrees, type Degrees } from './angle';
import { length, normalise, type Vector3 } from './vector';

/** Nine numbers, row by row; it multiplies a column vector from the left. */
export type Matrix3 = readonly [
  ...[number, number, number],
  ...[number, number, number],
  ...[number, number, number],
];

export const identity: Matrix3 = [1, 0, 0, 0, 1, 0, 0, 0, 1];

/** The product a·b: what b does first and a afterwards. */
export const multiply = (a: Matrix3, b: Matrix3): Matrix3 => [
  a[0] * b[0] + a[1] * b[3] + a[2] * b[6],
  a[0] * b[1] + a[1] * b[4] + a[2] * b[7],
  a[0] * b[2] + a[1] * b[5] + a[2] * b[8],
  a[3] * b[0] + a[4] * b[3] + a[5] * b[6],
  a[3] * b[1] + a[4] * b[4] + a[5] * b[7],
  a[3] * b[2] + a[4] * b[5] + a[5] * b[8],
  a[6] * b[0] + a[7] * b[3] + a[8] * b[6],
  a[6] * b[1] + a[7] * b[4] + a[8] * b[7],
  a[6] * b[2] + a[7] * b[5] + a[8] * b[8],
];

/** Rows and columns exchanged: of a rotation, the rotation that undoes it. */
// prettier-ignore
export const transpose = (m: Matrix3): Matrix3 => [
  m[0], m[3], m[6],
  m[1], m[4], m[7],
  m[2], m[5], m[8],
];

export const transform = (m: Matrix3, v: Vector3): Vector3 => [
  m[0] * v[0] + m[1] * v[1] + m[2] * v[2],
  m[3] * v[0] + m[4] * v[1] + m[5] * v[2],
  m[6] * v[0] + m[7] * v[1] + m[8] * v[2],
];

/**
 * Turns vectors about an axis by the right-hand rule: 90° about z takes x to y. The axis need not
 * have length one; the zero vector throws. Source: Rodrigues' rotation formula, from memory.
 */
export function aboutAxis(axis: Vector3, angleDeg: number): Matrix3 {
  const [x, y, z] = normalise(axis);
  const turn = degreesToRadians(angleDeg);
  const sin = Math.sin(turn);
  const cos = Math.cos(turn);
  // 1 − cos, without losing the digits of a small angle.
  const rest = 2 * Math.sin(turn / 2) ** 2;
  return [
    cos + x * x * rest,
    x * y * rest - z * sin,
    x * z * rest + y * sin,
    y * x * rest + z * sin,
    cos + y * y * rest,
    y * z * rest - x * sin,
    z * x * rest - y * sin,
    z * y * rest + x * sin,
    cos + z * z * rest,
  ];
}

/** By the right-hand rule, y towards z. */
export const aboutX = (angleDeg: number): Matrix3 => aboutAxis([1, 0, 0], angleDeg);

/** By the right-hand rule, z towards x. */
export const aboutY = (angleDeg: number): Matrix3 => aboutAxis([0, 1, 0], angleDeg);

/** By the right-hand rule, x towards y: against the way azimuth counts, seen from above. */
export const aboutZ = (angleDeg: number): Matrix3 => aboutAxis([0, 0, 1], angleDeg);

/** How far a rotation turns, [0°, 180°]; exact for tiny and for half turns alike. */
export function angle(rotation: Matrix3): Degrees {
  // |R − Rᵀ| holds the sine of the angle, the trace its cosine; both small only for no rotation.
  const twiceSine = length([
    rotation[7] - rotation[5],
    rotation[2] - rotation[6],
    rotation[3] - rotation[1],
  ]);
  return radiansToDegrees(Math.atan2(twiceSine, rotation[0] + rotation[4] + rotation[8] - 1));
}
