import type { Disturbance, RunSetup } from '../alignment/setup';
import type { SkyFrame } from '../sky/sky-frame';
import { believedFrame } from './believed-frame';
import type { Slips } from './slips';

/** What is the telescope's own, whoever sets it up. */
export type OwnTelescope = Omit<RunSetup, 'base' | 'dot' | 'believed' | 'disturbances'>;

/**
 * The set-up that a run is steered on, with every slip at its size. The start position is none of it:
 * a run begins with it. `frame` is the true sky at the run's first instant, `latitudeDeg` the true one.
 */
export const eveningSetup = (
  slips: Slips,
  telescope: OwnTelescope,
  { frame, latitudeDeg }: { frame: SkyFrame; latitudeDeg: number },
): RunSetup => ({
  ...telescope,
  base: slips.tilt,
  dot: slips.dot,
  believed: believedFrame(frame, latitudeDeg, slips.clockAndPlace),
  disturbances: disturbancesOf(slips),
});

/** No run has more confirms than this in it. */
const mostConfirms = 40;

/**
 * What happens unseen during the run, in the order in which it happens. A slew that the supply cannot
 * carry begins with the go-to that follows a confirm, the second slew after the first confirm; and as it
 * cannot carry that one, it carries none after it. (At the first slew nothing is there yet to be lost.)
 */
function disturbancesOf({ creep, clutch, kick, resetsAtSlew }: Slips): Disturbance[] {
  const sinks = (afterConfirm: number, altitudeDeg: number): Disturbance[] =>
    altitudeDeg === 0 ? [] : [{ kind: 'axis-slips', afterConfirm, azimuthDeg: 0, altitudeDeg }];
  const happenings: Disturbance[] = [
    ...sinks(1, creep.betweenStarsDeg),
    ...sinks(2, creep.afterSecondDeg),
    ...(clutch === null ? [] : [{ kind: 'axis-slips' as const, ...clutch }]),
    ...(kick === null ? [] : kicked(kick)),
    ...(resetsAtSlew === null ? [] : resets(Math.max(1, resetsAtSlew - 1))),
  ];
  return happenings.sort((a, b) => a.afterConfirm - b.afterConfirm);
}

const resets = (from: number): Disturbance[] =>
  Array.from({ length: Math.max(0, mostConfirms - from) }, (_, i) => ({
    kind: 'computer-resets',
    afterConfirm: from + i,
  }));

const kicked = ({
  afterConfirm,
  tiltDeg,
  risesTowardsDeg,
  azimuthDeg,
}: NonNullable<Slips['kick']>): Disturbance[] => [
  ...(tiltDeg === 0
    ? []
    : [{ kind: 'base-moves' as const, afterConfirm, tiltDeg, risesTowardsDeg }]),
  ...(azimuthDeg === 0 ? [] : [{ kind: 'base-turns' as const, afterConfirm, azimuthDeg }]),
];
