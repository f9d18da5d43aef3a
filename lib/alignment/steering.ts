import type { MountTruth } from '../pointing/achieved-errors';
import { goToReadings } from '../pointing/align';
import type { PointingModel } from '../pointing/pointing-model';
import { wrap180 } from '../units/angle';
import { identity } from '../units/matrix';
import { driven, held, resting, stepped, type AxisMotion, type AxisRange } from './axis-motion';
import { arrivalMs, trackedAt, type AxesAt, type Motion } from './motion';
import { rockerSpeedsDegPerSecond } from './run-log';
import { starSeenAt, starUnrefractedAt, type TurningSky } from './run-sky';
import type { RunSetup } from './setup';
import { trackingFromReadings, trackingOf, type Tracking } from './tracking';

/** The telescope at the instant of an action: what every new motion starts from. */
export type Now = {
  atMs: number;
  axes: AxesAt;
  truth: MountTruth;
  /** Null until an alignment agrees: then the mount neither tracks nor knows where it is. */
  model: PointingModel | null;
  sky: TurningSky;
  setup: RunSetup;
};

/** Before an alignment the computer believes that it stands level and faces north, reading zero. */
const unaligned: PointingModel = { base: identity, altitudeZeroDeg: 0 };

/** How low and how high the tube itself can be turned before it meets the mount. */
const tubeRange: AxisRange = { leastDeg: -25, mostDeg: 95 };
const anyAzimuth: AxisRange = { leastDeg: -Infinity, mostDeg: Infinity };
/** No reading of an altitude is lower. */
const leastReadingDeg = -90;

/** Stands, or keeps up with the sky when it can. */
export const standStill = (now: Now): Motion =>
  moved(now, followed(now), { azimuth: resting, altitude: resting });

export function holdRockers(now: Now, steps: { azimuth: number; altitude: number }): Motion {
  return moved(now, followed(now), {
    azimuth: (at) => held(at, rockerSpeed(steps.azimuth), anyAzimuth),
    altitude: (at, range) => held(at, rockerSpeed(steps.altitude), range),
  });
}

export function makeStep(now: Now, by: { azimuthArcmin: number; altitudeArcmin: number }): Motion {
  return moved(now, followed(now), {
    azimuth: (at) => stepped(at, by.azimuthArcmin / 60, anyAzimuth),
    altitude: (at, range) => stepped(at, by.altitudeArcmin / 60, range),
  });
}

/** Null when the believed sky has no such star. */
export function goTo(now: Now, hip: number): Motion | null {
  return now.model === null ? goToAndStand(now, hip) : goToAndTrack(now, now.model, hip);
}

/** Aligned: the tracking is the star's from the start, and what is still missing is driven away. */
function goToAndTrack(now: Now, model: PointingModel, hip: number): Motion | null {
  const direction = starUnrefractedAt(now.sky, hip, now.atMs);
  if (direction === null) return null;
  const tracking = trackingOf(model, now.sky, direction);
  return moved(now, tracking, {
    azimuth: (at) => driveTo(now, 'azimuth', at, wrap180(-at.fromDeg), anyAzimuth),
    altitude: (at, range) => driveTo(now, 'altitude', at, -at.fromDeg, range),
  });
}

/** Not aligned: to where the star is believed to be on arrival, which depends on how long it takes. */
function goToAndStand(now: Now, hip: number): Motion | null {
  let motion: Motion | null = null;
  // A slew is hundreds of times as fast as the sky: every round makes the arrival that much better.
  for (let round = 0; round < 4; round += 1) {
    const star = starSeenAt(now.sky, hip, motion === null ? now.atMs : arrivalMs(motion));
    const target = star === null ? null : goToReadings(unaligned, star);
    if (target === null) return null;
    motion = moved(now, null, {
      azimuth: (at) =>
        driveTo(now, 'azimuth', at, wrap180(target.azimuthDeg - at.fromDeg), anyAzimuth),
      altitude: (at, range) => driveTo(now, 'altitude', at, target.altitudeDeg - at.fromDeg, range),
    });
  }
  return motion;
}

type Rest = { fromDeg: number; lagDeg: number };

const driveTo = (
  { setup }: Now,
  axis: 'azimuth' | 'altitude',
  at: Rest,
  byDeg: number,
  range: AxisRange,
): AxisMotion => {
  const play = { playDeg: setup.backlashArcmin[axis] / 60, approach: setup.finalApproach[axis] };
  return driven(at, byDeg, setup.slewDegPerSecond, play, range);
};

const followed = ({ model, sky, axes }: Now): Tracking | null =>
  model === null ? null : trackingFromReadings(model, sky, axes);

const rockerSpeed = (step: number): number =>
  Math.sign(step) * (rockerSpeedsDegPerSecond[Math.abs(step)] ?? 0);

/** Starts a motion from where the axes stand; with tracking, each axis counts from what is tracked. */
function moved(
  { atMs, axes, truth }: Now,
  tracking: Tracking | null,
  each: {
    azimuth: (at: Rest) => AxisMotion;
    altitude: (at: Rest, range: AxisRange) => AxisMotion;
  },
): Motion {
  const tracked = trackedAt(tracking, 0);
  const zeroDeg = truth.errors.altitudeZeroDeg;
  return {
    startMs: atMs,
    truth,
    tracking,
    azimuth: each.azimuth({
      fromDeg: axes.azimuthDeg - tracked.azimuthDeg,
      lagDeg: axes.lag.azimuthDeg,
    }),
    altitude: each.altitude(
      { fromDeg: axes.altitudeDeg - tracked.altitudeDeg, lagDeg: axes.lag.altitudeDeg },
      {
        leastDeg: Math.max(tubeRange.leastDeg - zeroDeg, leastReadingDeg) - tracked.altitudeDeg,
        mostDeg: tubeRange.mostDeg - zeroDeg - tracked.altitudeDeg,
      },
    ),
  };
}
