import type { MountTruth } from '../pointing/achieved-errors';
import { azAltFromDirection } from '../units/vector';
import { resting } from './axis-motion';
import { confirm, disturbedRun } from './confirming';
import { arrivalMs, writeMotion, type Motion } from './motion';
import { driving, moving, nowAt, type ConfirmedMoment, type Run } from './run';
import { readOff } from './read-off';
import type { RunInput } from './run-input';
import type { RunAction, RunLog } from './run-log';
import { believedSky, starSeenAt } from './run-sky';
import type { RunRefusal, RunView } from './run-state';
import {
  afresh,
  afterAnotherStar,
  afterGoTo,
  firstProgress,
  goToRefusal,
  proposedHip,
  targetHip,
} from './stages';
import { standOf, truthAtStart, type StartPosition } from './start-position';
import { goTo, holdRockers, makeStep, standStill } from './steering';
import { makePose, type TubePose } from './tube-pose';

/** How far from sharp the eyepiece stands at first, in turns of the knob. */
export const firstFocus = 3;

export function startRun(input: RunInput): Run {
  const stand = standOf(input.setup);
  return {
    input,
    believed: believedSky(input),
    lastMs: 0,
    progress: firstProgress,
    stand,
    start: null,
    // As it was carried out: facing north, until the learner sets it.
    motion: motionAtStart(
      0,
      truthAtStart(stand, { azimuthDeg: 0, altitudeDeg: 0 }, input.setup.errors),
    ),
    past: null,
    arrivesAtMs: null,
    focus: firstFocus,
    confirms: [],
    confirmsMade: 0,
    outcome: null,
    alignments: [],
    refusal: null,
  };
}

const motionAtStart = (startMs: number, truth: MountTruth): Motion => ({
  startMs,
  truth,
  tracking: null,
  azimuth: resting({ fromDeg: 0, lagDeg: 0 }),
  altitude: resting({ fromDeg: 0, lagDeg: 0 }),
});

/**
 * The run after one more action. Never throws: an action that cannot be taken leaves the run as it
 * was and says why in `refusal`, which the next one that is taken clears.
 */
export function act(run: Run, action: RunAction): Run {
  const taken = takenOrRefused(run, action);
  return 'code' in taken
    ? { ...run, refusal: taken }
    : { ...taken, lastMs: action.at, refusal: null };
}

function takenOrRefused(run: Run, action: RunAction): Run | RunRefusal {
  const { stage } = run.progress;
  if (action.at < run.lastMs) return { code: 'out-of-order' };
  if (stage === 'judged') return { code: 'not-now' };
  if (stage === 'start-position' && needsTheMount.has(action.do)) return { code: 'not-now' };
  if (driving(run, action.at) && waitsForArrival.has(action.do)) return { code: 'still-moving' };

  switch (action.do) {
    case 'set-start':
      return setStart(run, action);
    case 'go-to':
      return goToStar(run, action.at, action.hip);
    case 'rockers':
      return moving(run, holdRockers(nowAt(run, action.at), action), null);
    case 'step': {
      const motion = makeStep(nowAt(run, action.at), action);
      return moving(run, motion, arrivalMs(motion));
    }
    case 'stop':
      return moving(run, standStill(nowAt(run, action.at)), null);
    case 'focus':
      return { ...run, focus: action.position };
    case 'this-is-the-star':
      return confirm(run, viewAt(run, action.at), action.readings);
    case 'another-star': {
      const progress = afterAnotherStar(run.input, run.progress);
      return 'code' in progress ? progress : { ...run, progress };
    }
    case 'start-again': {
      const dropped: Run = { ...run, progress: afresh, confirms: [], outcome: null };
      return moving(dropped, standStill(nowAt(dropped, action.at)), null);
    }
    case 'paused':
      return run.input.mayPause ? run : { code: 'may-not-pause' };
    case 'judge':
      return stage === 'result' || stage === 'check-third'
        ? { ...run, progress: { ...run.progress, stage: 'judged' } }
        : { code: 'not-now' };
  }
}

/** Not while the clutches are loose. */
const needsTheMount: ReadonlySet<RunAction['do']> = new Set([
  'go-to',
  'rockers',
  'step',
  'stop',
  'this-is-the-star',
  'another-star',
  'start-again',
]);

/** Not while the mount drives by itself: it is stopped first. */
const waitsForArrival: ReadonlySet<RunAction['do']> = new Set([
  'set-start',
  'go-to',
  'rockers',
  'step',
  'this-is-the-star',
]);

function setStart(run: Run, action: StartPosition & { at: number }): Run | RunRefusal {
  const { stage } = run.progress;
  if (stage !== 'start-position' && stage !== 'choose-first') return { code: 'not-now' };
  const start = { azimuthDeg: action.azimuthDeg, altitudeDeg: action.altitudeDeg };
  const truth = truthAtStart(run.stand, start, run.input.setup.errors);
  const set = moving({ ...run, start, progress: afresh }, motionAtStart(action.at, truth), null);
  return run.start === null ? disturbedRun(set, action.at) : set;
}

function goToStar(run: Run, atMs: number, hip: number): Run | RunRefusal {
  const refused = goToRefusal(run.input, run.progress, hip);
  if (refused !== null) return refused;
  const believed = starSeenAt(run.believed, hip, atMs);
  if (believed === null) return { code: 'not-in-this-sky', hip };
  if (azAltFromDirection(believed).altitudeDeg < 0) return { code: 'below-the-horizon' };
  const motion = goTo(nowAt(run, atMs), hip);
  if (motion === null) return { code: 'not-in-this-sky', hip };
  return moving({ ...run, progress: afterGoTo(run.progress, hip) }, motion, arrivalMs(motion));
}

/**
 * Where the telescope points at an instant not before the last action, into an object that is made
 * once with `makePose`: for a frame of the scene, which may allocate nothing.
 */
export function tubeAt(run: Run, atMs: number, into: TubePose): void {
  writeMotion(run.motion, run.input.setup, Math.max(atMs, run.lastMs), into);
}

/** What the run shows at an instant not before the last action. */
export function viewAt(run: Run, atMs: number): RunView {
  const { input, progress } = run;
  const pose = makePose();
  const shownMs = Math.max(atMs, run.lastMs);
  tubeAt(run, shownMs, pose);
  const moving = driving(run, shownMs);
  return {
    atMs: shownMs,
    stage: progress.stage,
    tube: pose.tube,
    tubeUp: pose.tubeUp,
    dot: pose.dot,
    readings: readOff(pose, input.setup.encoderStepArcsec),
    moving,
    arrivesAtMs: moving ? run.arrivesAtMs : null,
    focus: run.focus,
    targetHip: targetHip(input, progress),
    proposedHip: proposedHip(input, progress),
    confirmed: run.confirms,
    outcome: run.outcome,
    refusal: run.refusal,
  };
}

export type Replay =
  | { ok: true; run: Run; confirms: readonly ConfirmedMoment[] }
  /** `action` is the place in the log of the first one that was refused. */
  | { ok: false; action: number; refusal: RunRefusal };

/** Does again all that a log says was done; a log that holds a refused action does not add up. */
export function replayRun(input: RunInput, log: RunLog): Replay {
  let run = startRun(input);
  for (const [index, action] of log.entries()) {
    run = act(run, action);
    if (run.refusal !== null) return { ok: false, action: index, refusal: run.refusal };
  }
  return { ok: true, run, confirms: run.confirms };
}
