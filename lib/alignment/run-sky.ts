import type { StarCatalogue } from '../sky/catalogue';
import { refracted } from '../sky/refracted-direction';
import type { SkyFrame } from '../sky/sky-frame';
import { starDirection } from '../sky/star-direction';
import { latitudeOfFrameDeg, turnedDirection } from '../sky/turned-frame';
import type { Vector3 } from '../units/vector';
import type { RunInput } from './run-input';

/** A sky that turns: a frame for the run's first instant, and the latitude it is seen from. */
export type TurningSky = { frame: SkyFrame; latitudeDeg: number; catalogue: StarCatalogue };

/** The sky as it is. */
export const trueSky = ({ frame, scenario, catalogue }: RunInput): TurningSky => ({
  frame,
  latitudeDeg: scenario.place.latitudeDeg,
  catalogue,
});

/** The sky that the computer believes in: its place, too, may be wrong, so it is read off the frame. */
export const believedSky = ({ setup, catalogue }: RunInput): TurningSky => ({
  frame: setup.believed,
  latitudeDeg: latitudeOfFrameDeg(setup.believed),
  catalogue,
});

/** Where a star stands at an instant of the run, without refraction; null when it is in no catalogue. */
export function starUnrefractedAt(sky: TurningSky, hip: number, atMs: number): Vector3 | null {
  const atStart = starDirection(sky.catalogue, sky.frame, hip);
  return atStart === null ? null : turnedDirection(atStart, sky.latitudeDeg, atMs / 1000);
}

/** Where a star is seen at an instant of the run, refracted; null when it is in no catalogue. */
export function starSeenAt(sky: TurningSky, hip: number, atMs: number): Vector3 | null {
  const direction = starUnrefractedAt(sky, hip, atMs);
  return direction === null ? null : refracted(direction, sky.frame.refractionScale);
}
