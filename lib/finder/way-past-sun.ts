import { degreesToRadians, wrap180 } from '../units/angle';
import { directionFromAzAlt, separationDeg, type Vector3 } from '../units/vector';

/** Azimuth from north through east, altitude above the level; degrees. */
export type AzAlt = { azimuthDeg: number; altitudeDeg: number };

/** By day neither an open tube nor its way may come nearer to the Sun than this, degrees. Design, "Finder". */
export const nearestToSunDeg = 30;

/** Good to so much, degrees. */
const toleranceDeg = 0.01;

/**
 * Between two places of the mount: both axes turn evenly, the azimuth by the shorter way. `share` of
 * the way is 0 at the beginning and 1 at the end.
 */
export const onTheWay = (from: AzAlt, to: AzAlt, share: number): AzAlt => ({
  azimuthDeg: from.azimuthDeg + share * wrap180(to.azimuthDeg - from.azimuthDeg),
  altitudeDeg: from.altitudeDeg + share * (to.altitudeDeg - from.altitudeDeg),
});

/**
 * How near a tube comes to the Sun on its straight way between two places of the mount, great circle,
 * degrees. Never more than it really is, and less by 0.01° at most: what lies between two looks is
 * bounded by how far the tube travels there.
 */
export function leastSunDistanceDeg(from: AzAlt, to: AzAlt, sun: AzAlt): number {
  const sunwards = directionFromAzAlt(sun.azimuthDeg, sun.altitudeDeg);
  const fromSun = (share: number): number => distance(onTheWay(from, to, share), sunwards);
  const lengthDeg = travelDeg(from, to);
  let least = Math.min(fromSun(0), fromSun(1));
  // Halves of the way that may still hide something nearer than what is known.
  const left: [start: number, end: number, atStart: number, atEnd: number][] = [
    [0, 1, fromSun(0), fromSun(1)],
  ];
  for (;;) {
    const part = left.pop();
    if (part === undefined) return Math.max(0, least - toleranceDeg);
    const [start, end, atStart, atEnd] = part;
    const nearestPossible = (atStart + atEnd - lengthDeg * (end - start)) / 2;
    if (nearestPossible > least - toleranceDeg) continue;
    const middle = (start + end) / 2;
    const atMiddle = fromSun(middle);
    least = Math.min(least, atMiddle);
    left.push([start, middle, atStart, atMiddle], [middle, end, atMiddle, atEnd]);
  }
}

const distance = ({ azimuthDeg, altitudeDeg }: AzAlt, sun: Vector3): number =>
  separationDeg(directionFromAzAlt(azimuthDeg, altitudeDeg), sun);

/** At least as long as the way on the sky: turning in azimuth moves the tube by cos(altitude) of it. */
function travelDeg(from: AzAlt, to: AzAlt): number {
  const lowest =
    from.altitudeDeg * to.altitudeDeg <= 0
      ? 0
      : Math.min(Math.abs(from.altitudeDeg), Math.abs(to.altitudeDeg));
  return Math.hypot(
    wrap180(to.azimuthDeg - from.azimuthDeg) * Math.cos(degreesToRadians(lowest)),
    to.altitudeDeg - from.altitudeDeg,
  );
}
