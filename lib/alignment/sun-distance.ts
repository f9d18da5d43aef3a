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
export const sunRiseAltitudeDeg = -0.833;
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
  const down = direction[2] < Math.sin(degreesToRadians(sunRiseAltitudeDeg));
  return down ? null : refracted(direction, frame.refractionScale);
}

/** With the Sun up, neither tube nor dot may come nearer to it than this, degrees. Design, "Finder". */
export const nearestToSunDeg = 30;

/** The start position that every kit asks for: level and north. */
const prescribed: Vector3 = [0, 1, 0];
/** What is nearer to it than this was set as it should be: full marks' 5° and 2°, and the index. */
const asPrescribedDeg = 7;

type Search = {
  least: SunDistance | null;
  /**
   * How near the Sun stood to the start position when the motors first moved, until the tube is clear
   * of it (or comes nearer): leaving where the task told the learner to begin fails nobody.
   */
  leavingDeg: number | null;
};

/**
 * How near tube or dot came to the Sun while it was up, from the first move of the motors to an instant
 * (by default the last action): to 0.05°, never too large by more. Null when the Sun was never up, or
 * nothing moved. A tube that was set up as prescribed, too near the Sun, counts from when it is clear
 * of it or comes nearer. What is looked at next is as far ahead as nothing nearer can be reached
 * before, by the speed of the axes.
 */
export function leastSunDistance(run: Run, untilMs: number = run.lastMs): SunDistance | null {
  const stretches = stretchesOf(run, untilMs);
  const first = stretches.findIndex(({ degPerSecond }) => degPerSecond > 0);
  const [driven] = first < 0 ? [] : stretches.slice(first);
  if (driven === undefined) return null;
  const search: Search = { least: null, leavingDeg: leavingFrom(run, driven) };
  for (const stretch of stretches.slice(first)) lookThrough(run, stretch, search);
  return search.least;
}

function leavingFrom({ input }: Run, { motion, fromMs }: Stretch): number | null {
  const sun = sunSeenAt(trueSky(input), fromMs);
  if (sun === null) return null;
  const pose = makePose();
  writeMotion(motion, input.setup, fromMs, pose);
  const distanceDeg = Math.min(separationDeg(pose.tube, sun), separationDeg(pose.dot, sun));
  const set = separationDeg(pose.tube, prescribed) < asPrescribedDeg;
  return set && distanceDeg < nearestToSunDeg ? distanceDeg : null;
}

function lookThrough(
  { input }: Run,
  { motion, fromMs, toMs, degPerSecond }: Stretch,
  search: Search,
): void {
  const sky = trueSky(input);
  const pose = makePose();
  // The tracking and the Sun, once each, with as much again to spare.
  const nearsDegPerSecond = degPerSecond + 4 * siderealDegPerSecond;
  for (let atMs = fromMs; ;) {
    const sun = sunSeenAt(sky, atMs);
    let ahead = waitsSeconds;
    if (sun !== null) {
      writeMotion(motion, input.setup, atMs, pose);
      const tube = separationDeg(pose.tube, sun);
      const dot = separationDeg(pose.dot, sun);
      const distanceDeg = Math.min(tube, dot);
      const { leavingDeg } = search;
      if (
        leavingDeg !== null &&
        (distanceDeg >= nearestToSunDeg || distanceDeg < leavingDeg - toleranceDeg)
      ) {
        search.leavingDeg = null;
      }
      const leastDeg: number = search.least?.distanceDeg ?? 180;
      const spareDeg =
        search.leavingDeg === null
          ? distanceDeg - leastDeg
          : Math.min(distanceDeg - search.leavingDeg, nearestToSunDeg - distanceDeg);
      ahead = Math.min(Math.max(spareDeg, toleranceDeg) / nearsDegPerSecond, mostSeconds);
      if (search.leavingDeg === null && distanceDeg < leastDeg) {
        search.least = { distanceDeg, atMs, of: tube <= dot ? 'tube' : 'dot' };
      }
    }
    if (atMs >= toMs) return;
    atMs = Math.min(toMs, atMs + ahead * 1000);
  }
}
