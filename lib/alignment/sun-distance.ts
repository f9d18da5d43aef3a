import { siderealDegPerSecond, turnedDirection } from '../sky/turned-frame';
import { degreesToRadians } from '../units/angle';
import { refracted } from '../sky/refracted-direction';
import { directionFromAzAlt, separationDeg, type Vector3 } from '../units/vector';
import { writeMotion } from './motion';
import type { Run } from './run';
import { stretchesOf, type Stretch } from './run-history';
import { trueSky, type TurningSky } from './run-sky';
import { makePose } from './tube-pose';

/** The Sun's centre at rise and set: half a disc and the horizon's refraction. USNO. */
const riseAltitudeDeg = -0.833;
/** The least distance is found to this. */
const toleranceDeg = 0.05;
/** A Sun that is down is looked for again after so long. */
const waitsSeconds = 30;
/** No look at the sky is longer apart: tracking near the zenith turns the tube in its own frame. */
const mostSeconds = 10;

export type SunDistance = { distanceDeg: number; atMs: number; of: 'tube' | 'dot' };

/** Where the Sun is seen at an instant of the run; null while it is down. */
export function sunSeenAt({ frame, latitudeDeg }: TurningSky, atMs: number): Vector3 | null {
  const atStart = directionFromAzAlt(frame.sun.azimuthDeg, frame.sun.trueAltitudeDeg);
  const direction = turnedDirection(atStart, latitudeDeg, atMs / 1000);
  const down = direction[2] < Math.sin(degreesToRadians(riseAltitudeDeg));
  return down ? null : refracted(direction, frame.refractionScale);
}

/**
 * How near tube or dot came to the Sun while it was up, from the start position to an instant (by
 * default the last action): to 0.05°, never too large by more. Null when the Sun was never up. What is
 * looked at next is as far ahead as nothing nearer can be reached before, by the speed of the axes.
 */
export function leastSunDistance(run: Run, untilMs: number = run.lastMs): SunDistance | null {
  let least: SunDistance | null = null;
  for (const stretch of stretchesOf(run, untilMs)) least = leastIn(run, stretch, least);
  return least;
}

function leastIn(
  { input }: Run,
  { motion, fromMs, toMs, degPerSecond }: Stretch,
  before: SunDistance | null,
): SunDistance | null {
  const sky = trueSky(input);
  const pose = makePose();
  // The tracking and the Sun, once each, with as much again to spare.
  const nearsDegPerSecond = degPerSecond + 4 * siderealDegPerSecond;
  let least = before;
  for (let atMs = fromMs; ;) {
    const sun = sunSeenAt(sky, atMs);
    let ahead = waitsSeconds;
    if (sun !== null) {
      writeMotion(motion, input.setup, atMs, pose);
      const tube = separationDeg(pose.tube, sun);
      const dot = separationDeg(pose.dot, sun);
      const distanceDeg = Math.min(tube, dot);
      const leastDeg: number = least?.distanceDeg ?? 180;
      const spareDeg = Math.max(distanceDeg - leastDeg, toleranceDeg);
      ahead = Math.min(spareDeg / nearsDegPerSecond, mostSeconds);
      if (distanceDeg < leastDeg) least = { distanceDeg, atMs, of: tube <= dot ? 'tube' : 'dot' };
    }
    if (atMs >= toMs) return least;
    atMs = Math.min(toMs, atMs + ahead * 1000);
  }
}
