import type { PathPoint } from '@/lib/grading/run-result';
import type { FieldOffset } from '@/lib/optics/image-orientation';
import { offsetFromTube } from '@/lib/optics/tube-offset';
import { refracted, unrefracted } from '@/lib/sky/refracted-direction';
import { turnedDirection } from '@/lib/sky/turned-frame';
import { directionFromAzAlt, separationDeg, type Vector3 } from '@/lib/units/vector';

type Placed = { azimuthDeg: number; altitudeDeg: number };

/** One sample of a centring, seen from the star that was meant, which moves with the sky. */
export type CentringStep = {
  /** Before the confirm, seconds. */
  secondsBefore: number;
  /** From tube to star, on the sky. */
  awayArcmin: number;
  /** Where the tube pointed beside the star; null when it was more than a right angle away. */
  tubeBesideStar: FieldOffset | null;
  /** Where the star stood beside the tube's axis; null likewise. */
  starBesideTube: FieldOffset | null;
};

/**
 * The path of a centring about the star that was meant: the star stood at `confirmed` when the last
 * sample was taken, and where it stood before follows from the turn of the sky. Right is along the
 * horizon and up is towards the zenith: a base that leans turns the eyepiece's own up by as much.
 */
export function centringSteps(
  path: readonly PathPoint[],
  confirmed: Placed,
  sky: { latitudeDeg: number; refractionScale: number },
): CentringStep[] {
  const last = path.at(-1);
  if (last === undefined) return [];
  const atConfirm = unrefracted(
    directionFromAzAlt(confirmed.azimuthDeg, confirmed.altitudeDeg),
    sky.refractionScale,
  );
  return path.map((point) => {
    const seconds = (point.atMs - last.atMs) / 1000;
    const star = refracted(
      turnedDirection(atConfirm, sky.latitudeDeg, seconds),
      sky.refractionScale,
    );
    const tube = directionFromAzAlt(point.azimuthDeg, point.altitudeDeg);
    return {
      secondsBefore: -seconds,
      awayArcmin: separationDeg(tube, star) * 60,
      tubeBesideStar: offsetFromTube(star, upwardAt(star), tube),
      starBesideTube: offsetFromTube(tube, upwardAt(tube), star),
    };
  });
}

/** Square to a direction, towards the zenith. */
function upwardAt([x, y, z]: Vector3): Vector3 {
  const level = Math.hypot(x, y);
  if (level < 1e-12) return [0, 1, 0];
  return [(-z * x) / level, (-z * y) / level, level];
}
