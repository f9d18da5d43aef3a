import { separationDeg, type Vector3 } from '../units/vector';
import type { Night, WeighedStar } from './night';

/** Nearer to an aligned star than this, a third one tells little. Our own choice, no source. */
const wellOffDeg = 25;
const most = 6;

/**
 * Stars to check an alignment on, whichever two it was made on: usable ones, those first that nothing
 * is mistaken for, each as far as can be from the ones before and from the star that is given.
 */
export function thirdStars(night: Night, givenHip: number | null): number[] {
  const given = night.usable.filter((star) => star.hip === givenHip);
  const chosen: WeighedStar[] = [];
  const left = night.usable.filter((star) => star.hip !== givenHip);
  while (chosen.length < most && left.length > 0) {
    const taken = [...given, ...chosen];
    const worth = (star: WeighedStar) =>
      Math.min(90, ...taken.map((one) => separationDeg(one.direction, star.direction))) -
      (star.hasCaution ? 90 : 0);
    left.sort((a, b) => worth(b) - worth(a));
    chosen.push(...left.splice(0, 1));
  }
  return chosen.map(({ hip }) => hip);
}

/** The first of them that lies well off both aligned stars, or the one that lies farthest off. */
export function thirdStarFor(
  thirdHips: readonly number[],
  aligned: readonly { hip: number; direction: Vector3 }[],
  directionOf: (hip: number) => Vector3 | null,
): number | null {
  const offDeg = (hip: number): number => {
    const direction = directionOf(hip);
    if (direction === null || direction[2] <= 0) return -1;
    return Math.min(...aligned.map((one) => separationDeg(one.direction, direction)));
  };
  const others = thirdHips.filter((hip) => aligned.every((one) => one.hip !== hip));
  const wellOff = others.find((hip) => offDeg(hip) >= wellOffDeg);
  if (wellOff !== undefined) return wellOff;
  const [farthest] = others.filter((hip) => offDeg(hip) >= 0).sort((a, b) => offDeg(b) - offDeg(a));
  return farthest ?? null;
}
