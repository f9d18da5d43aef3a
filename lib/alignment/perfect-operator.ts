import { fieldRadiusArcmin } from '../pointing/field-radius';
import { degreesToRadians, wrap360 } from '../units/angle';
import { azAltFromDirection, normalise, type Vector3 } from '../units/vector';
import { replayRun, startRun, viewAt } from './alignment-run';
import { worthOfAlignment } from './alignment-worth';
import { centred, handle, type Handled } from './centring-hand';
import { deservedJudgement } from './deserved-judgement';
import { lightSeenAt, type SkyLight } from './lights';
import { bestStars, type OperatorStars } from './operator-stars';
import type { Run } from './run';
import type { RunInput } from './run-input';
import type { RunAction } from './run-log';
import { trueSky } from './run-sky';

/** What an operator does wrong at one of the two stars, on purpose. */
export type CentringSlip = {
  /** Centres another light than the star that was gone to. */
  instead?: SkyLight;
  /** Stops short by so much of the centring eyepiece's field radius … */
  offByShareOfField?: number;
  /** … in this direction: 0° up, 90° to the right. */
  offTowardsDeg?: number;
  /** Finishes from the wrong side, with the play still in the readings. */
  againstFinalApproach?: boolean;
};

export type OperatorOptions = {
  first?: CentringSlip;
  second?: CentringSlip;
  /** Added to true north and level. */
  startErrorDeg?: { azimuth: number; altitude: number };
  /** By default the first of the input's; null for none. */
  thirdHip?: number | null;
  /** By default what the alignment deserves. */
  trust?: boolean;
};

/** Between an arrival and the next thing that is done. */
const pauseMs = 2000;

/**
 * The log of an operator who steers by the true sky: start position true north and level, two stars
 * (by default the best pair the task leaves open) centred in the final approach direction, a third
 * to check on, and a judgement. With options, of one who does the same but for the slips that were
 * asked for.
 *
 * @throws {Error} when the task leaves no pair of usable stars, or the believed sky has one below the
 * horizon: no such task should have been made.
 */
export function perfectLog(
  input: RunInput,
  stars: OperatorStars | null = bestStars(input),
  options: OperatorOptions = {},
): RunAction[] {
  if (stars === null) throw new Error('the task leaves no pair of usable stars');
  const { startErrorDeg = { azimuth: 0, altitude: 0 } } = options;
  let handled: Handled = { run: startRun(input), log: [] };
  handled = handle(handled, {
    at: 0,
    do: 'set-start',
    azimuthDeg: wrap360(startErrorDeg.azimuth),
    altitudeDeg: startErrorDeg.altitude,
  });
  handled = handle(handled, { at: pauseMs, do: 'focus', position: 0 });
  handled = confirmed(handled, stars[0], options.first ?? {});
  handled = confirmed(handled, stars[1], options.second ?? {});

  const thirdHip = options.thirdHip === undefined ? input.thirdHips?.[0] : options.thirdHip;
  if (thirdHip !== undefined && thirdHip !== null) {
    handled = handle(handled, { at: nextMs(handled.run), do: 'go-to', hip: thirdHip });
  }
  const trust = options.trust ?? deservesTrust(handled.run, stars, options);
  return [...handle(handled, { at: nextMs(handled.run), do: 'judge', trust }).log];
}

/** Goes to a star, centres it and confirms it at the very instant at which it is centred. */
function confirmed(handled: Handled, hip: number, slip: CentringSlip): Handled {
  const { input } = handled.run;
  const arrived = wentTo(handled, hip);
  const sky = trueSky(input);
  const light = slip.instead ?? { hip };
  const wanted = (atMs: number): Vector3 => {
    const seen = lightSeenAt(sky, light, atMs);
    if (seen === null) throw new Error('there is no such light to centre');
    return beside(
      seen,
      (slip.offByShareOfField ?? 0) * centringRadiusArcmin(input),
      slip.offTowardsDeg ?? 0,
    );
  };
  const there = centred(arrived, nextMs(arrived.run), wanted, slip.againstFinalApproach ?? false);
  const at = there.run.arrivesAtMs ?? there.run.lastMs;
  return handle(there, { at, do: 'this-is-the-star', readings: viewAt(there.run, at).readings });
}

/** Turns proposals down until the wanted star is proposed. */
function wentTo(handled: Handled, hip: number): Handled {
  let asking = handled;
  for (;;) {
    const { proposedHip } = viewAt(asking.run, asking.run.lastMs);
    if (proposedHip === null || proposedHip === hip) break;
    asking = handle(asking, { at: nextMs(asking.run), do: 'another-star' });
  }
  return handle(asking, { at: nextMs(asking.run), do: 'go-to', hip });
}

const nextMs = ({ lastMs, arrivesAtMs }: Run): number =>
  Math.max(lastMs, arrivesAtMs ?? 0) + pauseMs;

const centringRadiusArcmin = ({ scenario, kit }: RunInput): number =>
  fieldRadiusArcmin(scenario.telescope, kit.centringEyepiece);

/** The direction so far from another: 0° is up, 90° to the right. */
function beside(direction: Vector3, arcmin: number, towardsDeg: number): Vector3 {
  const { azimuthDeg, altitudeDeg } = azAltFromDirection(direction);
  const azimuth = degreesToRadians(azimuthDeg);
  const altitude = degreesToRadians(altitudeDeg);
  const far = Math.tan(degreesToRadians(arcmin / 60));
  const right = far * Math.sin(degreesToRadians(towardsDeg));
  const up = far * Math.cos(degreesToRadians(towardsDeg));
  return normalise([
    direction[0] + right * Math.cos(azimuth) - up * Math.sin(altitude) * Math.sin(azimuth),
    direction[1] - right * Math.sin(azimuth) - up * Math.sin(altitude) * Math.cos(azimuth),
    direction[2] + up * Math.cos(altitude),
  ]);
}

/** Where a careful person might say either, this one doubts. */
function deservesTrust(run: Run, stars: OperatorStars, options: OperatorOptions): boolean {
  const achieved = hitRateOf(run);
  const slipped = options.first !== undefined || options.second !== undefined;
  if (!slipped) return achieved !== null;
  const perfect = replayRun(
    run.input,
    perfectLog(run.input, stars, { thirdHip: null, trust: true }),
  );
  const perfectHitRate = perfect.ok ? hitRateOf(perfect.run) : null;
  return perfectHitRate !== null && deservedJudgement(achieved, perfectHitRate) === 'trust';
}

/** Share of go-tos in the observing eyepiece with the alignment as it is; null without one. */
const hitRateOf = ({ input, outcome, motion }: Run): number | null =>
  outcome === null ? null : (worthOfAlignment(input, outcome, motion.truth)?.hitRate ?? null);
