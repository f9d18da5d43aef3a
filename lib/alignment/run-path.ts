import { siderealDegPerSecond } from '../sky/turned-frame';
import { azAltFromDirection, type Vector3 } from '../units/vector';
import { writeMotion } from './motion';
import type { Run } from './run';
import { stretchesOf } from './run-history';
import { makePose } from './tube-pose';

/** Where the tube pointed at an instant: local, refracted. */
export type PathPoint = { atMs: number; azimuthDeg: number; altitudeDeg: number };

type Sample = { atMs: number; tube: Vector3 };

/** Between two samples of a slew, so that a line between them is bent by less than an arcminute. */
const sampleDeg = 1;
/** At first, points are left out that lie this near to the line between their neighbours. */
const finestArcmin = 0.25;

/**
 * The tube's way over the sky between two instants of the run, thinned to `mostPoints` at the most
 * (at least 2): straight stretches give up their points first, so that the fine steps of a centring
 * keep theirs. First and last are kept. Ramer–Douglas–Peucker (Douglas & Peucker 1973), from memory.
 */
export function tubePath(
  run: Run,
  { fromMs, toMs, mostPoints = 200 }: { fromMs: number; toMs: number; mostPoints?: number },
): PathPoint[] {
  const samples = samplesOf(run, fromMs, toMs);
  let kept = samples;
  for (let arcmin = finestArcmin; ; arcmin *= 2) {
    kept = thinned(samples, (arcmin / 60) * (Math.PI / 180));
    if (kept.length <= Math.max(2, mostPoints)) break;
  }
  return kept.map(({ atMs, tube }) => ({ atMs, ...azAltFromDirection(tube) }));
}

function samplesOf(run: Run, fromMs: number, toMs: number): Sample[] {
  const pose = makePose();
  const samples: Sample[] = [];
  for (const stretch of stretchesOf(run, Math.max(toMs, run.lastMs))) {
    const from = Math.max(stretch.fromMs, fromMs);
    const to = Math.min(stretch.toMs, toMs);
    if (to < from) continue;
    const degPerSecond = stretch.degPerSecond + siderealDegPerSecond;
    const parts = Math.max(1, Math.ceil((degPerSecond * (to - from)) / 1000 / sampleDeg));
    for (let part = 0; part <= parts; part += 1) {
      const atMs = from + ((to - from) * part) / parts;
      writeMotion(stretch.motion, run.input.setup, atMs, pose);
      samples.push({ atMs, tube: [...pose.tube] });
    }
  }
  return samples;
}

/** Leaves out what lies within a distance (of unit vectors) of the line through what is kept. */
function thinned(samples: readonly Sample[], distance: number): Sample[] {
  const last = samples.length - 1;
  if (last < 1) return [...samples];
  const keep = new Set([0, last]);
  const open: [number, number][] = [[0, last]];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const [from, to] = next;
    const farthest = farthestFromLine(samples, from, to);
    if (farthest === null || farthest.distance <= distance) continue;
    keep.add(farthest.index);
    open.push([from, farthest.index], [farthest.index, to]);
  }
  return samples.filter((_, index) => keep.has(index));
}

function farthestFromLine(
  samples: readonly Sample[],
  from: number,
  to: number,
): { index: number; distance: number } | null {
  const a = samples[from]?.tube;
  const b = samples[to]?.tube;
  if (a === undefined || b === undefined) return null;
  let farthest: { index: number; distance: number } | null = null;
  for (let index = from + 1; index < to; index += 1) {
    const point = samples[index]?.tube;
    if (point === undefined) continue;
    const distance = distanceFromLine(point, a, b);
    if (farthest === null || distance > farthest.distance) farthest = { index, distance };
  }
  return farthest;
}

function distanceFromLine(point: Vector3, a: Vector3, b: Vector3): number {
  const [x, y, z] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const [px, py, pz] = [point[0] - a[0], point[1] - a[1], point[2] - a[2]];
  const square = x * x + y * y + z * z;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, (px * x + py * y + pz * z) / square));
  return Math.hypot(px - share * x, py - share * y, pz - share * z);
}
