import { nearestToSunDeg, type AzAlt } from '@/lib/finder/way-past-sun';
import type { FinderVariant } from '@/lib/variants/bench/finder/finder-variant';
import { degreesToRadians, wrap180, wrap360 } from '@/lib/units/angle';
import { azAltFromDirection, cross, directionFromAzAlt, normalise } from '@/lib/units/vector';

/** The scene is drawn in degrees: to the right of its middle, and downward from the level. */
export const sceneHalfWidth = 120;
export const sceneTop = -62;
export const sceneBottom = 12;

export type ScenePoint = { x: number; y: number };

export const toScene = (
  { azimuthDeg, altitudeDeg }: AzAlt,
  middleAzimuthDeg: number,
): ScenePoint => ({
  x: wrap180(azimuthDeg - middleAzimuthDeg),
  y: -altitudeDeg,
});

/** Inverse of {@link toScene}, kept within what the mount reaches. */
export const fromScene = ({ x, y }: ScenePoint, middleAzimuthDeg: number): AzAlt => ({
  azimuthDeg: wrap360(middleAzimuthDeg + Math.min(sceneHalfWidth, Math.max(-sceneHalfWidth, x))),
  altitudeDeg: Math.min(60, Math.max(-8, -y)),
});

export const pathOf = (points: readonly ScenePoint[]): string =>
  points.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(2)} ${y.toFixed(2)}`).join(' ');

/** All that is 30° from the Sun: a circle on the sky, drawn where the scene shows each of its points. */
export function keepOutPath({ azimuthDeg, altitudeDeg }: AzAlt, middleAzimuthDeg: number): string {
  const sun = directionFromAzAlt(azimuthDeg, altitudeDeg);
  const right = normalise(cross(sun, [0, 0, 1]));
  const up = cross(right, sun);
  const near = Math.cos(degreesToRadians(nearestToSunDeg));
  const far = Math.sin(degreesToRadians(nearestToSunDeg));
  const sunX = wrap180(azimuthDeg - middleAzimuthDeg);
  const points = Array.from({ length: 72 }, (_, i): ScenePoint => {
    const turn = degreesToRadians(i * 5);
    const at = (axis: 0 | 1 | 2): number =>
      near * sun[axis] + far * (Math.cos(turn) * right[axis] + Math.sin(turn) * up[axis]);
    const place = azAltFromDirection([at(0), at(1), at(2)]);
    // From the Sun, so that the ring stays whole beyond the scene's edge.
    return { x: sunX + wrap180(place.azimuthDeg - azimuthDeg), y: -place.altitudeDeg };
  });
  return `${pathOf(points)} Z`;
}

const letters = 'ABCDEFGH';

/** Things of the day, then lights of the evening, each by its letter from left to right. */
export function lettersOf(variant: FinderVariant): ReadonlyMap<string, string> {
  const fromLeft = (aims: readonly (AzAlt & { id: string })[]) =>
    [...aims].sort(
      (one, other) =>
        wrap180(one.azimuthDeg - variant.middleAzimuthDeg) -
        wrap180(other.azimuthDeg - variant.middleAzimuthDeg),
    );
  const all = [...fromLeft(variant.day?.targets ?? []), ...fromLeft(variant.dusk?.lights ?? [])];
  return new Map(all.map(({ id }, i) => [id, letters[i] ?? '']));
}
