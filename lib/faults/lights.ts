import { starSeenAt, type TurningSky } from '../alignment/run-sky';
import { turnedFrame } from '../sky/turned-frame';
import { directionFromAzAlt, type Vector3 } from '../units/vector';
import type { Light } from './faulty-evening';

/**
 * Where a light is seen so many seconds after the sky's first instant: east, north, up, refracted.
 *
 * @throws {Error} for a star that the catalogue or a planet that the frame does not have.
 */
export function lightAt(sky: TurningSky, light: Light, seconds: number): Vector3 {
  if (light.kind === 'planet') return planetAt(sky, light.body, seconds);
  const direction = starSeenAt(sky, light.hip, seconds * 1000);
  if (direction === null) throw new Error(`HIP ${String(light.hip)} is not in the catalogue`);
  return direction;
}

/** A planet keeps its place among the stars well enough for an evening. */
function planetAt({ frame, latitudeDeg }: TurningSky, body: string, seconds: number): Vector3 {
  const turned = turnedFrame(frame, latitudeDeg, seconds);
  const planet = turned.planets.find((one) => one.body === body);
  if (planet === undefined) throw new Error(`${body} is not in this sky`);
  return directionFromAzAlt(planet.azimuthDeg, planet.altitudeDeg);
}
