import { degreesToRadians, radiansToDegrees, wrap360 } from './angle';

/** In the local frame: x east, y north, z up (right-handed). */
export type Vector3 = readonly [number, number, number];
/** A vector to be written into, where a frame of the scene may allocate nothing. */
export type MutableVector3 = [number, number, number];

export const dot = (u: Vector3, v: Vector3): number => u[0] * v[0] + u[1] * v[1] + u[2] * v[2];

export const cross = (u: Vector3, v: Vector3): Vector3 => [
  u[1] * v[2] - u[2] * v[1],
  u[2] * v[0] - u[0] * v[2],
  u[0] * v[1] - u[1] * v[0],
];

export const length = (u: Vector3): number => Math.hypot(u[0], u[1], u[2]);

export function normalise(u: Vector3): Vector3 {
  const size = length(u);
  if (size === 0) throw new RangeError('the zero vector has no direction');
  return [u[0] / size, u[1] / size, u[2] / size];
}

/** Azimuth from north through east, altitude from the horizon, both in degrees → unit vector. */
export function directionFromAzAlt(azimuthDeg: number, altitudeDeg: number): Vector3 {
  const azimuth = degreesToRadians(azimuthDeg);
  const altitude = degreesToRadians(altitudeDeg);
  const horizontal = Math.cos(altitude);
  return [horizontal * Math.sin(azimuth), horizontal * Math.cos(azimuth), Math.sin(altitude)];
}

/** Inverse of {@link directionFromAzAlt}; azimuth in [0°, 360°), 0° at the zenith. */
export function azAltFromDirection(u: Vector3): { azimuthDeg: number; altitudeDeg: number } {
  return {
    azimuthDeg: wrap360(radiansToDegrees(Math.atan2(u[0], u[1]))),
    altitudeDeg: radiansToDegrees(Math.atan2(u[2], Math.hypot(u[0], u[1]))),
  };
}

/** Great-circle separation in degrees, [0°, 180°]; exact for tiny and for opposite angles alike. */
export function separationDeg(u: Vector3, v: Vector3): number {
  return radiansToDegrees(Math.atan2(length(cross(u, v)), dot(u, v)));
}
