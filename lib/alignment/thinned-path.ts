import type { Vector3 } from '../units/vector';

/**
 * Thins a way over the sky to `most` points at the most (at least both ends): what lies farthest from
 * the line so far comes back first, until nothing lies farther from it than `distance` (of unit
 * vectors). Ramer–Douglas–Peucker (Douglas & Peucker 1973, from memory), worst stretch first: every
 * sample is looked at no more than `most` times, also on a way that retraces itself for ever.
 */
export function thinned<Sample>(
  samples: readonly Sample[],
  directionOf: (sample: Sample) => Vector3,
  { most, distance }: { most: number; distance: number },
): Sample[] {
  const last = samples.length - 1;
  if (last < 1) return [...samples];
  const kept = new Set([0, last]);
  const open = [farthestFromLine(samples, directionOf, 0, last)];
  while (kept.size < most) {
    const worst = open.reduce((one, other) => (other.distance > one.distance ? other : one));
    if (worst.distance <= distance) break;
    kept.add(worst.index);
    open.splice(
      open.indexOf(worst),
      1,
      farthestFromLine(samples, directionOf, worst.from, worst.index),
      farthestFromLine(samples, directionOf, worst.index, worst.to),
    );
  }
  return samples.filter((_, index) => kept.has(index));
}

/** What lies farthest between two kept samples; at no distance when nothing lies between them. */
type Farthest = { from: number; to: number; index: number; distance: number };

function farthestFromLine<Sample>(
  samples: readonly Sample[],
  directionOf: (sample: Sample) => Vector3,
  from: number,
  to: number,
): Farthest {
  const farthest: Farthest = { from, to, index: from, distance: 0 };
  const [first, last] = [samples[from], samples[to]];
  if (first === undefined || last === undefined) return farthest;
  const [a, b] = [directionOf(first), directionOf(last)];
  for (let index = from + 1; index < to; index += 1) {
    const sample = samples[index];
    if (sample === undefined) continue;
    const distance = distanceFromLine(directionOf(sample), a, b);
    if (distance > farthest.distance) Object.assign(farthest, { index, distance });
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
