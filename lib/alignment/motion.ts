import type { MountTruth } from '../pointing/achieved-errors';
import { lagDegAt, positionDeg, secondsOf, type AxisMotion } from './axis-motion';
import type { RunSetup } from './setup';
import { writeTracked, type Tracking } from './tracking';
import { writePose, type TubePose } from './tube-pose';

/** How the telescope moves from one action to the next. */
export type Motion = {
  startMs: number;
  truth: MountTruth;
  /** Null: the axes stand at what follows; else what follows comes on top of the tracking. */
  tracking: Tracking | null;
  azimuth: AxisMotion;
  altitude: AxisMotion;
};

/** What the axes stand at, unrounded, and how the tube hangs in each. */
export type AxesAt = {
  azimuthDeg: number;
  altitudeDeg: number;
  lag: { azimuthDeg: number; altitudeDeg: number };
};

const azimuthLagDeg = ({ azimuth }: Motion, setup: RunSetup, seconds: number): number =>
  lagDegAt(azimuth, seconds, setup.backlashArcmin.azimuth / 60, setup.finalApproach.azimuth);

const altitudeLagDeg = ({ altitude }: Motion, setup: RunSetup, seconds: number): number =>
  lagDegAt(altitude, seconds, setup.backlashArcmin.altitude / 60, setup.finalApproach.altitude);

/**
 * The telescope at an instant of a motion (not before its start). Tracking moves the tube with the
 * reading: the slow turn of the sky is taken not to lift the gears off the side they rest on.
 */
export function writeMotion(motion: Motion, setup: RunSetup, atMs: number, into: TubePose): void {
  const seconds = (atMs - motion.startMs) / 1000;
  into.azimuthDeg = 0;
  into.altitudeDeg = 0;
  if (motion.tracking !== null) writeTracked(motion.tracking, seconds, into.tube, into);
  into.azimuthDeg += positionDeg(motion.azimuth, seconds);
  into.altitudeDeg += positionDeg(motion.altitude, seconds);
  writePose(
    into.azimuthDeg + azimuthLagDeg(motion, setup, seconds),
    into.altitudeDeg + altitudeLagDeg(motion, setup, seconds),
    motion.truth,
    setup.dot,
    into,
  );
}

export function axesAt(motion: Motion, setup: RunSetup, atMs: number): AxesAt {
  const seconds = (atMs - motion.startMs) / 1000;
  const tracked = trackedAt(motion.tracking, seconds);
  return {
    azimuthDeg: tracked.azimuthDeg + positionDeg(motion.azimuth, seconds),
    altitudeDeg: tracked.altitudeDeg + positionDeg(motion.altitude, seconds),
    lag: {
      azimuthDeg: azimuthLagDeg(motion, setup, seconds),
      altitudeDeg: altitudeLagDeg(motion, setup, seconds),
    },
  };
}

/** The part of the readings that tracking alone accounts for; none without it. */
export function trackedAt(
  tracking: Tracking | null,
  seconds: number,
): { azimuthDeg: number; altitudeDeg: number } {
  const readings = { azimuthDeg: 0, altitudeDeg: 0 };
  if (tracking !== null) writeTracked(tracking, seconds, [0, 0, 0], readings);
  return readings;
}

/** When both axes have done their legs. Whole milliseconds, so that an action can fall on it. */
export const arrivalMs = ({ startMs, azimuth, altitude }: Motion): number =>
  startMs + Math.ceil(Math.max(secondsOf(azimuth), secondsOf(altitude)) * 1000);
