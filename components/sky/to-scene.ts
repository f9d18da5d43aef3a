import { degreesToRadians } from '@/lib/units/angle';
import type { Vector3 } from '@/lib/units/vector';
import { directionFromAzAlt } from '@/lib/units/vector';

/** How far from the eye the sky is drawn, in scene units. Nothing is ever nearer or farther. */
export const skyRadius = 100;

/**
 * The one place where axes change. Local: x east, y north, z up. Scene (the renderer's habit):
 * x to the right, y up, z towards the viewer; with the viewer facing north, that is
 * x east, y up, z south.
 */
export const toScene = (u: Vector3): Vector3 => [u[0], u[2], -u[1]];

/** Inverse of {@link toScene}. */
export const fromScene = (v: Vector3): Vector3 => [v[0], -v[2], v[1]];

/** Azimuth from north through east and altitude, in degrees, as a scene direction of unit length. */
export const sceneDirection = (azimuthDeg: number, altitudeDeg: number): Vector3 =>
  toScene(directionFromAzAlt(azimuthDeg, altitudeDeg));

/** A point on the drawn sky, `radius` scene units away. */
export function scenePoint(azimuthDeg: number, altitudeDeg: number, radius = skyRadius): Vector3 {
  const u = sceneDirection(azimuthDeg, altitudeDeg);
  return [u[0] * radius, u[1] * radius, u[2] * radius];
}

/**
 * Camera turn in radians, to be applied about y and then about the camera's own x ('YXZ').
 * An unturned camera looks along −z, which is north; azimuth grows to the right, hence the sign.
 */
export const cameraTurn = (
  azimuthDeg: number,
  altitudeDeg: number,
): { aboutY: number; aboutX: number } => ({
  aboutY: degreesToRadians(-azimuthDeg),
  aboutX: degreesToRadians(altitudeDeg),
});
