import { landingBeside } from '@/lib/faults/where-it-lands';
import type { PathPoint, RunStarResult } from '@/lib/grading/run-result';
import type { FieldOffset } from '@/lib/optics/image-orientation';
import { refracted, unrefracted } from '@/lib/sky/refracted-direction';
import { turnedDirection } from '@/lib/sky/turned-frame';
import { directionFromAzAlt, type Vector3 } from '@/lib/units/vector';

/**
 * One sample of a centring, seen from the star that was meant, which moves with the sky. Offsets are
 * arcs of the great circle between the two, split along the horizon and upward: true at any distance.
 */
export type CentringStep = {
  /** Before the confirm, seconds. */
  secondsBefore: number;
  /** From tube to star, on the sky. */
  awayArcmin: number;
  tubeBesideStar: FieldOffset;
  /** Where the star stood beside the tube's axis. */
  starBesideTube: FieldOffset;
};

/**
 * The path of a centring about the star that was meant: the star stood at its place in `confirmed` when
 * the last sample was taken, and where it stood before follows from the turn of the sky. Right is along
 * the horizon and up is towards the zenith: a base that leans turns the eyepiece's own up by as much.
 */
export function centringSteps(
  path: readonly PathPoint[],
  confirmed: Pick<RunStarResult, 'hip' | 'name' | 'azimuthDeg' | 'altitudeDeg'>,
  sky: { latitudeDeg: number; refractionScale: number },
): CentringStep[] {
  const last = path.at(-1);
  if (last === undefined) return [];
  const atConfirm = unrefracted(
    directionFromAzAlt(confirmed.azimuthDeg, confirmed.altitudeDeg),
    sky.refractionScale,
  );
  const beside = (one: Vector3, other: Vector3): FieldOffset => {
    const { rightDeg, upDeg } = landingBeside(confirmed, one, other);
    return { rightArcmin: rightDeg * 60, upArcmin: upDeg * 60 };
  };
  return path.map((point) => {
    const seconds = (point.atMs - last.atMs) / 1000;
    const star = refracted(
      turnedDirection(atConfirm, sky.latitudeDeg, seconds),
      sky.refractionScale,
    );
    const tube = directionFromAzAlt(point.azimuthDeg, point.altitudeDeg);
    const tubeBesideStar = beside(star, tube);
    return {
      secondsBefore: -seconds,
      awayArcmin: Math.hypot(tubeBesideStar.rightArcmin, tubeBesideStar.upArcmin),
      tubeBesideStar,
      starBesideTube: beside(tube, star),
    };
  });
}
