import type { FieldOffset } from '../optics/image-orientation';
import { offsetFromTube } from '../optics/tube-offset';
import { degreesToRadians, wrap360 } from '../units/angle';
import { directionFromAzAlt } from '../units/vector';
import { dotAtInfinity } from './dot-residual';
import type { AzAlt } from './way-past-sun';

/** Something to set a finder on. */
export type Aim = AzAlt & {
  /** From the telescope; null for what is in the sky. */
  distanceM: number | null;
};

/** Where the finder sits on the tube, told from behind it, axis to axis. */
export type FinderPlace = { rightMm: number; upMm: number };

/** Where an aim lies beside the tube's axis, from behind the tube; null for what is not ahead of it. */
export const aimFromTube = (tube: AzAlt, aim: AzAlt): FieldOffset | null =>
  offsetFromTube(
    directionFromAzAlt(tube.azimuthDeg, tube.altitudeDeg),
    directionFromAzAlt(tube.azimuthDeg, tube.altitudeDeg + 90),
    directionFromAzAlt(aim.azimuthDeg, aim.altitudeDeg),
  );

/** Where the finder, beside the tube, would have to point to be on an aim on which the tube is centred. */
export const parallaxOf = (
  { rightMm, upMm }: FinderPlace,
  distanceM: number | null,
): FieldOffset =>
  distanceM === null
    ? { rightArcmin: 0, upArcmin: 0 }
    : dotAtInfinity({ finderRightMm: rightMm, finderUpMm: upMm, distanceM });

/**
 * Where an aim lies beside the tube's axis as the finder sees it, from its own place: near things are
 * shifted, far ones are not. Null for what is not ahead.
 */
export function aimFromFinder(tube: AzAlt, aim: Aim, finder: FinderPlace): FieldOffset | null {
  const offset = aimFromTube(tube, aim);
  return offset === null ? null : plus(offset, parallaxOf(finder, aim.distanceM));
}

export const plus = (one: FieldOffset, other: FieldOffset): FieldOffset => ({
  rightArcmin: one.rightArcmin + other.rightArcmin,
  upArcmin: one.upArcmin + other.upArcmin,
});

export const minus = (one: FieldOffset, other: FieldOffset): FieldOffset => ({
  rightArcmin: one.rightArcmin - other.rightArcmin,
  upArcmin: one.upArcmin - other.upArcmin,
});

export const sizeArcmin = ({ rightArcmin, upArcmin }: FieldOffset): number =>
  Math.hypot(rightArcmin, upArcmin);

/**
 * A tube moved by so much to the right along the horizon and upward. Azimuth runs ahead of the way on
 * the sky by 1/cos(altitude); good for the small steps of a hand, and kept off the zenith.
 */
export function tubeMoved(tube: AzAlt, by: FieldOffset): AzAlt {
  const altitudeDeg = Math.min(
    highestTubeDeg,
    Math.max(lowestTubeDeg, tube.altitudeDeg + by.upArcmin / 60),
  );
  const along = Math.cos(degreesToRadians(tube.altitudeDeg));
  return { azimuthDeg: wrap360(tube.azimuthDeg + by.rightArcmin / 60 / along), altitudeDeg };
}

/** How low and how high the mount tips its tube, degrees. */
export const lowestTubeDeg = -8;
export const highestTubeDeg = 80;
