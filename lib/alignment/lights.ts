import { refracted } from '../sky/refracted-direction';
import type { NakedEyePlanet } from '../sky/sky-frame';
import { turnedDirection } from '../sky/turned-frame';
import { directionFromAzAlt, type Vector3 } from '../units/vector';
import { starSeenAt, type TurningSky } from './run-sky';

/** What can stand in an eyepiece and be taken for the star that was meant. */
export type SkyLight = { hip: number } | { planet: NakedEyePlanet };

/** Where a light is seen at an instant of the run, refracted; null when the sky has no such light. */
export function lightSeenAt(sky: TurningSky, light: SkyLight, atMs: number): Vector3 | null {
  if ('hip' in light) return starSeenAt(sky, light.hip, atMs);
  const place = sky.frame.planets.find(({ body }) => body === light.planet);
  if (place === undefined) return null;
  const atStart = directionFromAzAlt(place.azimuthDeg, place.trueAltitudeDeg);
  return refracted(
    turnedDirection(atStart, sky.latitudeDeg, atMs / 1000),
    sky.frame.refractionScale,
  );
}
