import type { Vector3 } from '@/lib/units/vector';
import {
  azAltFromDirection,
  cross,
  directionFromAzAlt,
  dot,
  length,
  normalise,
} from '@/lib/units/vector';
import { degreesToRadians, radiansToDegrees } from '@/lib/units/angle';

export type Placed = { azimuthDeg: number; altitudeDeg: number };

/**
 * The whole sky as a disc: zenith in the middle, horizon at the rim, north up. As seen looking up
 * from below, so east lies to the LEFT. Equal steps of altitude are equal steps outward
 * (azimuthal equidistant projection).
 */
export function onDisc(
  { azimuthDeg, altitudeDeg }: Placed,
  radius: number,
): { x: number; y: number } {
  return onOpenDisc({ azimuthDeg, altitudeDeg: Math.max(0, altitudeDeg) }, radius);
}

/** The same, with what is below the horizon outside the rim. */
function onOpenDisc({ azimuthDeg, altitudeDeg }: Placed, radius: number): { x: number; y: number } {
  const out = (radius * (90 - altitudeDeg)) / 90;
  const azimuth = degreesToRadians(azimuthDeg);
  return { x: -out * Math.sin(azimuth), y: -out * Math.cos(azimuth) };
}

const point = (at: Placed, radius: number): string => {
  const { x, y } = onDisc(at, radius);
  return `${x.toFixed(1)} ${y.toFixed(1)}`;
};

/**
 * Which way the great circle from one direction to another sets out on the disc, in degrees clockwise
 * from the disc's right, as SVG turns. 0 when the two are the same or opposite.
 */
export function headingOnDisc(from: Placed, to: Placed, radius: number): number {
  const u = directionFromAzAlt(from.azimuthDeg, from.altitudeDeg);
  const v = directionFromAzAlt(to.azimuthDeg, to.altitudeDeg);
  const axis = cross(cross(u, v), u);
  if (length(axis) === 0) return 0;
  const ahead = normalise(axis);
  const step = 0.01;
  const next: Vector3 = [u[0] + ahead[0] * step, u[1] + ahead[1] * step, u[2] + ahead[2] * step];
  const a = onOpenDisc(azAltFromDirection(u), radius);
  const b = onOpenDisc(azAltFromDirection(normalise(next)), radius);
  return radiansToDegrees(Math.atan2(b.y - a.y, b.x - a.x));
}

/** The shortest way over the sky between two directions, as SVG path data. */
export function greatCirclePath(from: Placed, to: Placed, radius: number): string {
  const u = directionFromAzAlt(from.azimuthDeg, from.altitudeDeg);
  const v = directionFromAzAlt(to.azimuthDeg, to.altitudeDeg);
  const axis = cross(cross(u, v), u);
  if (length(axis) === 0) return '';
  const ahead = normalise(axis);
  const angle = Math.atan2(dot(ahead, v), dot(u, v));
  const steps = 32;
  const parts: string[] = [];
  for (let step = 0; step <= steps; step += 1) {
    const turn = (angle * step) / steps;
    const w: Vector3 = [
      u[0] * Math.cos(turn) + ahead[0] * Math.sin(turn),
      u[1] * Math.cos(turn) + ahead[1] * Math.sin(turn),
      u[2] * Math.cos(turn) + ahead[2] * Math.sin(turn),
    ];
    parts.push(point(azAltFromDirection(w), radius));
  }
  return `M${parts.join(' L')}`;
}

/** A circle on the sky round a centre, as closed SVG path data. */
export function skyCirclePath(centre: Placed, radiusDeg: number, radius: number): string {
  const u = directionFromAzAlt(centre.azimuthDeg, centre.altitudeDeg);
  // Any direction across will do as a start; at the zenith the first product vanishes.
  const level = cross(u, [0, 0, 1]);
  const right = length(level) > 1e-9 ? normalise(level) : ([1, 0, 0] as const);
  const up = cross(right, u);
  const reach = degreesToRadians(radiusDeg);
  const parts: string[] = [];
  for (let spoke = 0; spoke < 48; spoke += 1) {
    const turn = (spoke / 48) * 2 * Math.PI;
    const across = Math.sin(reach) * Math.cos(turn);
    const upward = Math.sin(reach) * Math.sin(turn);
    const w: Vector3 = [
      u[0] * Math.cos(reach) + right[0] * across + up[0] * upward,
      u[1] * Math.cos(reach) + right[1] * across + up[1] * upward,
      u[2] * Math.cos(reach) + right[2] * across + up[2] * upward,
    ];
    parts.push(point(azAltFromDirection(w), radius));
  }
  return `M${parts.join(' L')} Z`;
}

/** The line of a given altitude all round, as closed SVG path data. */
export function ringPath(
  altitudeAt: (azimuthDeg: number) => number,
  azimuths: readonly number[],
  radius: number,
): string {
  return `M${azimuths.map((azimuthDeg) => point({ azimuthDeg, altitudeDeg: altitudeAt(azimuthDeg) }, radius)).join(' L')} Z`;
}
