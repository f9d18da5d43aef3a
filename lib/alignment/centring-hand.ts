import { degreesToRadians, radiansToDegrees } from '../units/angle';
import { azAltFromDirection, cross, dot, type Vector3 } from '../units/vector';
import { act, viewAt } from './alignment-run';
import type { Run } from './run';
import type { RunAction } from './run-log';

/** A run with the log that led to it. */
export type Handled = { run: Run; log: readonly RunAction[] };

/** @throws {Error} when the action is refused: a robot's hand makes no mistakes of that kind. */
export function handle({ run, log }: Handled, action: RunAction): Handled {
  const next = act(run, action);
  if (next.refusal !== null) throw new Error(`${action.do} was refused: ${next.refusal.code}`);
  return { run: next, log: [...log, action] };
}

/** Degrees of each axis. */
type ByAxis = { azimuth: number; altitude: number };

/** Finer than any eyepiece shows, coarse enough to be typed. */
const stepsPerArcmin = 100;
/**
 * What the coarse step leaves, on the tube: more than the star drifts while the longest slow step runs
 * (5 s, 1.3′), and so little that with any play the fine step is a slow one.
 */
const leaveArcmin = 3;
/**
 * A step that is aimed by trying it is as good as it gets after a few tries; through play it feels its
 * way by what the coarse step left, so 20′ of it take seven more.
 */
const tries = 20;

/**
 * Centres a direction that moves with the sky: a coarse step to a little before it, then a
 * fine one onto it in the final approach direction, in which the tube moves only once the play is taken
 * up (or, against the rule, from the other side). The hand may look ahead: it tries a step on the run, sees where it
 * would end, and mends it before it makes it.
 */
export function centred(
  handled: Handled,
  atMs: number,
  wanted: (atMs: number) => Vector3,
  againstFinalApproach: boolean,
): Handled {
  const { finalApproach } = handled.run.input.setup;
  const leaveDeg = (againstFinalApproach ? -leaveArcmin : leaveArcmin) / 60;
  const before: ByAxis = {
    azimuth: leaveDeg * finalApproach.azimuth,
    altitude: leaveDeg * finalApproach.altitude,
  };
  const coarse = steppedTo(handled, atMs, wanted, before);
  const arrivedMs = coarse.run.arrivesAtMs ?? atMs;
  return steppedTo(coarse, arrivedMs, wanted, { azimuth: 0, altitude: 0 });
}

/** One step, after which the axes still have `leave` to go. */
function steppedTo(
  handled: Handled,
  atMs: number,
  wanted: (atMs: number) => Vector3,
  leave: ByAxis,
): Handled {
  let by: ByAxis = { azimuth: 0, altitude: 0 };
  let best = handled;
  for (let tried = 0; tried < tries; tried += 1) {
    best = handle(handled, {
      at: atMs,
      do: 'step',
      azimuthArcmin: rounded(by.azimuth * 60),
      altitudeArcmin: rounded(by.altitude * 60),
    });
    const arrivedMs = best.run.arrivesAtMs ?? atMs;
    const left = toGo(best.run, arrivedMs, wanted(arrivedMs));
    const miss = {
      azimuth: left.azimuth - leave.azimuth,
      altitude: left.altitude - leave.altitude,
    };
    if (Math.hypot(miss.azimuth, miss.altitude) * 60 * stepsPerArcmin < 1) break;
    by = { azimuth: by.azimuth + miss.azimuth, altitude: by.altitude + miss.altitude };
  }
  return best;
}

const rounded = (arcmin: number): number => Math.round(arcmin * stepsPerArcmin) / stepsPerArcmin;

/** How far each axis would have to turn to bring a direction into the middle, near enough for a try. */
function toGo(run: Run, atMs: number, direction: Vector3): ByAxis {
  const { tube, tubeUp } = viewAt(run, atMs);
  const altitude = azAltFromDirection(tube).altitudeDeg;
  const sin = Math.sin(degreesToRadians(altitude));
  const cos = Math.cos(degreesToRadians(altitude));
  const ahead = dot(tube, direction);
  const up = dot(tubeUp, direction);
  const right = dot(cross(tube, tubeUp), direction);
  // The tube lowered again to where the horizon of the mount about is: there the axes are apart.
  return {
    azimuth: radiansToDegrees(Math.atan2(right, ahead * cos - up * sin)),
    altitude: radiansToDegrees(Math.asin(clamp(ahead * sin + up * cos))) - altitude,
  };
}

const clamp = (sine: number): number => Math.min(1, Math.max(-1, sine));
