import { alignOnTwo } from '../pointing/align';
import type { Readings } from '../pointing/pointing-model';
import { wrap180 } from '../units/angle';
import { disturbed, type Standing } from './disturbances';
import { moving, nowAt, type Run } from './run';
import { starSeenAt } from './run-sky';
import type { Confirmed, RunRefusal, RunView } from './run-state';
import { afresh, afterConfirm } from './stages';
import { standStill } from './steering';

/**
 * "This is the star": taken when the readings that were sent are those that the view shows, within one
 * count of the encoders. `view` is the run's at this instant.
 */
export function confirm(run: Run, view: RunView, readings: Readings): Run | RunRefusal {
  const { atMs } = view;
  const { progress, input } = run;
  const hip = progress.goneToHip;
  const centring = progress.stage === 'centre-first' || progress.stage === 'centre-second';
  if (!centring || hip === null) return { code: 'not-now' };
  if (!agree(readings, view.readings, input.setup.encoderStepArcsec)) {
    return { code: 'does-not-add-up', atMs };
  }
  const { axes, truth } = nowAt(run, atMs);
  const confirms = [
    ...run.confirms,
    {
      hip,
      atMs,
      // As they were sent: two machines may round the last digit to either side of a step.
      readings,
      // What was refused before is no part of it: the log does not hold it.
      view: { ...view, refusal: null },
      playArcmin: { azimuth: axes.lag.azimuthDeg * 60, altitude: axes.lag.altitudeDeg * 60 },
      truth,
    },
  ];
  const confirmed: Run = {
    ...run,
    confirms,
    confirmsMade: run.confirmsMade + 1,
    progress: afterConfirm(input, progress, hip),
  };
  return disturbedRun(aligned(confirmed, atMs), atMs);
}

const agree = (sent: Readings, replayed: Readings, stepArcsec: number): boolean => {
  // A step apart still counts; the rest is for the rounding of sums.
  const withinDeg = stepArcsec / 3600 + 1e-9;
  return (
    Math.abs(wrap180(sent.azimuthDeg - replayed.azimuthDeg)) <= withinDeg &&
    Math.abs(sent.altitudeDeg - replayed.altitudeDeg) <= withinDeg
  );
};

/** With the second star confirmed the computer aligns; when it agrees, it tracks from then on. */
function aligned(run: Run, atMs: number): Run {
  const [first, second] = run.confirms;
  if (first === undefined || second === undefined) return run;
  const sighting = ({ hip, atMs: then, readings }: Confirmed) => {
    const sky = starSeenAt(run.believed, hip, then);
    if (sky === null) throw new Error(`star ${hip} was gone to and is in no catalogue`);
    return { sky, readings };
  };
  const outcome = alignOnTwo(run.input.scenario.telescope.computer, [
    sighting(first),
    sighting(second),
  ]);
  const alignments = [...run.alignments, { atMs, outcome, confirms: run.confirms }];
  const known: Run = { ...run, outcome, alignments };
  return outcome.kind === 'agree' ? moving(known, standStill(nowAt(known, atMs)), null) : known;
}

/** What happens unseen after so many confirms; after none, as soon as the start position is set. */
export function disturbedRun(run: Run, atMs: number): Run {
  const { disturbances } = run.input.setup;
  const now = disturbances.filter(({ afterConfirm: after }) => after === run.confirmsMade);
  if (now.length === 0) return run;
  const { axes, truth } = nowAt(run, atMs);
  const before: Standing = { stand: run.stand, truth, axes };
  const after = now.reduce(disturbed, before);
  const forgets = now.some(({ kind }) => kind === 'computer-resets');
  const later: Run = forgets
    ? { ...run, stand: after.stand, progress: afresh, confirms: [], outcome: null }
    : { ...run, stand: after.stand };
  return moving(
    later,
    standStill({ ...nowAt(later, atMs), axes: after.axes, truth: after.truth }),
    null,
  );
}
