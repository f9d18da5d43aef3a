import { radiansToDegrees } from '@/lib/units/angle';
import type { SkyFrame } from '@/lib/sky/sky-frame';
import { siderealDegPerSecond } from '@/lib/sky/turned-frame';

/** By how many degrees the sky turns about the pole in so many seconds of time. */
export const skyTurnDeg = (seconds: number): number => siderealDegPerSecond * seconds;

/**
 * By how many degrees one sky must be turned to lie on another, about whichever axis: what a wrong
 * clock or place does to everything at once. [0°, 180°]; from the matrices' Frobenius distance,
 * |A − B| = 2√2 sin(angle/2), which keeps its digits at small angles.
 */
export function turnBetweenDeg(one: SkyFrame, other: SkyFrame): number {
  const distance = Math.hypot(...one.icrsToLocal.map((x, i) => x - (other.icrsToLocal[i] ?? NaN)));
  return radiansToDegrees(2 * Math.asin(Math.min(1, distance / (2 * Math.SQRT2))));
}
