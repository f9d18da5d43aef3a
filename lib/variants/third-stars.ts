import { separationDeg } from '../units/vector';
import type { Night, WeighedStar } from './night';

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
