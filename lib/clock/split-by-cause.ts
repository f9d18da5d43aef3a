import { dot, length, separationDeg, type Vector3 } from '../units/vector';
import {
  believedSkyOf,
  seenAt,
  tubeSentTo,
  type BelievedSky,
  type SkyInNumbers,
} from './believed-place';
import type { HourCircle } from './hour-angle';
import { entriesThatDiffer, withEntry, type FormEntry, type MountForm } from './mount-form';

export type MissCause = FormEntry | 'start';

export type SplitMiss = {
  missDeg: number;
  /** What each cause adds to the miss; one that works against the others is negative. */
  shares: readonly { cause: MissCause; deg: number }[];
  /** What is left over: causes that are large do not simply add up. */
  togetherDeg: number;
};

/** Each thing that was entered wrongly, with the sky that it alone would make a mount believe in. */
export function causesOf(
  form: MountForm,
  {
    right,
    summerTimeMinutes,
    startDeg,
  }: { right: MountForm; summerTimeMinutes: number; startDeg: number },
): { cause: MissCause; believed: BelievedSky }[] {
  const alone: { cause: MissCause; believed: BelievedSky | null }[] = entriesThatDiffer(
    form,
    right,
    summerTimeMinutes,
  ).map((entry) => ({
    cause: entry,
    believed: believedSkyOf(withEntry(right, entry, form), { right, summerTimeMinutes }),
  }));
  if (startDeg !== 0) {
    alone.push({
      cause: 'start',
      believed: believedSkyOf(right, { right, summerTimeMinutes, startDeg }),
    });
  }
  // The 30th entered into a February is refused with the whole form; alone it moves nothing.
  return alone.flatMap(({ cause, believed }) => (believed === null ? [] : [{ cause, believed }]));
}

/**
 * The miss at a star, split by cause: to first order each cause moves the landing point by a vector, and
 * its share is that vector's component along the miss. The shares and what is left sum to the miss.
 */
export function splitMiss(
  star: HourCircle,
  believed: BelievedSky,
  causes: readonly { cause: MissCause; believed: BelievedSky }[],
  sky: SkyInNumbers,
): SplitMiss {
  const seen = seenAt(star, sky);
  const miss = wayTo(seen, tubeSentTo(star, believed, sky));
  const size = length(miss);
  const shares = causes.map(({ cause, believed: alone }) => ({
    cause,
    deg: size === 0 ? 0 : dot(wayTo(seen, tubeSentTo(star, alone, sky)), miss) / size,
  }));
  const sum = shares.reduce((total, { deg }) => total + deg, 0);
  return { missDeg: size, shares, togetherDeg: size - sum };
}

/** From one direction to another: along the great circle, square to the first, as long as it is far in degrees. */
function wayTo(from: Vector3, to: Vector3): Vector3 {
  const along = dot(from, to);
  const across: Vector3 = [
    to[0] - along * from[0],
    to[1] - along * from[1],
    to[2] - along * from[2],
  ];
  const size = length(across);
  // On the spot there is no way to go; opposite to it, every way is as good.
  if (size === 0) return [0, 0, 0];
  const scale = separationDeg(from, to) / size;
  return [across[0] * scale, across[1] * scale, across[2] * scale];
}

/** How far the Moon runs among the stars in a time, degrees: 13.176° a day (sidereal month, 27.321661 days). */
export const moonRunsDeg = (ms: number): number => (360 / 27.321_661) * (ms / 86_400_000);

/** The root of the mean square: one figure for misses at several stars. */
export const rootMeanSquare = (values: readonly number[]): number =>
  values.length === 0
    ? 0
    : Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
