import { geometryFullMark, starMark } from '../pointing/pair-mark';
import type { Night, WeighedStar } from './night';
import type { Random } from './random';

/**
 * Six to eight stars in the order a mount proposes them that knows no houses, trees and clouds: the
 * first one or two stand behind something, and so does one after the first good star. The two good
 * ones that follow make a pair worth full marks. Null when too little stands in the way tonight.
 */
export function proposeBehindThings(random: Random, night: Night): number[] | null {
  const full = night.pairs.filter((pair) => pair.mark >= 2 * starMark + geometryFullMark - 0.01);
  const plain = new Set(night.usable.filter((star) => !star.hasCaution).map(({ hip }) => hip));
  const good = random.pick(full.filter((pair) => pair.stars.every((hip) => plain.has(hip))));
  const hidden = random.shuffle(night.stars.filter((star) => onlyHidden(star, night)));
  const leading = random.integer(1, 2);
  if (good === undefined || hidden.length < leading + 1) return null;
  const [first, second] = random.shuffle(good.stars);
  if (first === undefined || second === undefined) return null;
  const [ahead, between] = [hidden.slice(0, leading), hidden.slice(leading, leading + 1)];
  const others = random
    .shuffle(night.usable.filter((star) => plain.has(star.hip) && !good.stars.includes(star.hip)))
    .slice(0, random.integer(2, 3));
  return [...ahead.map(hipOf), first, ...between.map(hipOf), second, ...others.map(hipOf)];
}

const hipOf = (star: WeighedStar): number => star.hip;

/** A fine star by the list, if only one could see it. */
function onlyHidden(star: WeighedStar, { scenario }: Night): boolean {
  const [reason, another] = star.reasons;
  if (reason === undefined || another !== undefined || !star.named) return false;
  if (star.altitudeDeg < scenario.settings.lowestAltitudeDeg) return false;
  return (
    reason.code === 'behind-cloud' ||
    (reason.code === 'behind-horizon' && reason.altitudeDeg < reason.horizonAltitudeDeg)
  );
}
