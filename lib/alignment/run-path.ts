import { siderealDegPerSecond } from '../sky/turned-frame';
import { azAltFromDirection, type Vector3 } from '../units/vector';
import { writeMotion, type Motion } from './motion';
import type { Run } from './run';
import { stretchesOf } from './run-history';
import { thinned } from './thinned-path';
import { makePose } from './tube-pose';

/** Where the tube pointed at an instant: local, refracted. */
export type PathPoint = { atMs: number; azimuthDeg: number; altitudeDeg: number };

type Look = { atMs: number; motion: Motion };
type Sample = { atMs: number; tube: Vector3 };

/** Between two samples of a slew, so that a line between them is bent by less than an arcminute. */
const sampleDeg = 1;
/** Hours of steering come to more: of those, so many are taken, evenly. */
export const mostSamples = 2000;
/** Points are left out that lie this near to the line between their neighbours. */
const finestArcmin = 0.25;

/**
 * The tube's way over the sky between two instants of the run, thinned to `mostPoints` at the most
 * (at least 2): straight stretches give up their points first, so that the fine steps of a centring
 * keep theirs. First and last are kept.
 */
export function tubePath(
  run: Run,
  { fromMs, toMs, mostPoints = 200 }: { fromMs: number; toMs: number; mostPoints?: number },
): PathPoint[] {
  const distance = (finestArcmin / 60) * (Math.PI / 180);
  const kept = thinned(samplesOf(run, fromMs, toMs), ({ tube }) => tube, {
    most: mostPoints,
    distance,
  });
  return kept.map(({ atMs, tube }) => ({ atMs, ...azAltFromDirection(tube) }));
}

/** Where the tube pointed from instant to instant, `mostSamples` times at the most. */
export function samplesOf(run: Run, fromMs: number, toMs: number): Sample[] {
  const pose = makePose();
  return evenly(looksOf(run, fromMs, toMs)).map(({ atMs, motion }) => {
    writeMotion(motion, run.input.setup, atMs, pose);
    return { atMs, tube: [...pose.tube] };
  });
}

function looksOf(run: Run, fromMs: number, toMs: number): Look[] {
  const looks: Look[] = [];
  for (const stretch of stretchesOf(run, Math.max(toMs, run.lastMs))) {
    const from = Math.max(stretch.fromMs, fromMs);
    const to = Math.min(stretch.toMs, toMs);
    if (to < from) continue;
    const degPerSecond = stretch.degPerSecond + siderealDegPerSecond;
    const parts = Math.max(1, Math.ceil((degPerSecond * (to - from)) / 1000 / sampleDeg));
    for (let part = 0; part <= parts; part += 1) {
      looks.push({ atMs: from + ((to - from) * part) / parts, motion: stretch.motion });
    }
  }
  return looks;
}

/** First and last are among them. */
function evenly(looks: readonly Look[]): readonly Look[] {
  if (looks.length <= mostSamples) return looks;
  const every = (looks.length - 1) / (mostSamples - 1);
  return Array.from({ length: mostSamples }, (_, i) => looks[Math.round(i * every)]).filter(
    (look) => look !== undefined,
  );
}
