import { separationDeg } from '../units/vector';
import { geometryFullMark, geometryMark, starMark } from '../pointing/pair-mark';
import type { Night, WeighedStar } from './night';
import type { Random } from './random';

const mostCautious = 3;

/**
 * Six to eight stars for the mount to propose, in the order it does: two that make a pair as good as
 * any tonight, and one of each kind of doubtful star that the sky offers. Null when the night has no
 * full pair or too few doubtful stars.
 */
export function proposeStars(random: Random, night: Night): number[] | null {
  const fullPairs = night.pairs.filter(
    (pair) => pair.mark >= 2 * starMark + geometryFullMark - 0.01,
  );
  // Preferably one whose stars nothing is mistaken for, so that one pair is right beyond question.
  const plain = new Set(night.usable.filter((star) => !star.hasCaution).map((star) => star.hip));
  const plainPairs = fullPairs.filter((pair) => pair.stars.every((hip) => plain.has(hip)));
  const good = random.pick(plainPairs.length > 0 ? plainPairs : fullPairs);
  if (good === undefined) return null;
  const count = random.integer(6, 8);
  const chosen = new Set<number>(good.stars);
  const goodStars = night.usable.filter((star) => chosen.has(star.hip));
  const best = night.pairs[0]?.hitRate ?? 0;
  const weakPartners = new Set(
    night.pairs
      .filter((pair) => pair.stars.some((hip) => good.stars.includes(hip)))
      .filter((pair) => geometryMark(pair.hitRate, best) < geometryFullMark / 2)
      .flatMap((pair) => pair.stars),
  );

  // A mount knows no houses, no clouds and no look-alikes: it proposes what its list says is up.
  const named = night.stars.filter((star) => star.named && !chosen.has(star.hip));
  const because = (code: string) => (star: WeighedStar) =>
    star.reasons.some((reason) => reason.code === code);
  const bright = (star: WeighedStar) => star.magnitude <= night.scenario.settings.faintestMagnitude;
  const near = (star: WeighedStar) =>
    star.usable &&
    (weakPartners.has(star.hip) ||
      goodStars.some((one) => separationDeg(one.direction, star.direction) < 20));
  const kinds: ((star: WeighedStar) => boolean)[] = random.shuffle([
    (star) => bright(star) && because('too-low')(star),
    (star) => bright(star) && because('too-high')(star),
    (star) => bright(star) && (because('behind-horizon')(star) || because('behind-cloud')(star)),
    (star) => because('too-faint')(star) || because('variable')(star),
    near,
    near,
    (star) => star.usable && star.hasCaution,
  ]);
  const take = (fits: (star: WeighedStar) => boolean): void => {
    if (chosen.size >= count) return;
    const star = random.pick(named.filter((one) => fits(one) && !chosen.has(one.hip)));
    if (star !== undefined) chosen.add(star.hip);
  };
  kinds.forEach(take);
  for (let i = 0; i < count; i++) take((star) => star.usable || bright(star));

  const byHip = new Map(night.stars.map((star) => [star.hip, star]));
  const doubtful = [...chosen].filter((hip) => byHip.get(hip)?.usable !== true).length;
  if (chosen.size < 6 || doubtful === 0) return null;
  if ([...chosen].filter((hip) => byHip.get(hip)?.hasCaution === true).length > mostCautious) {
    return null;
  }
  return inOrder(random, [...chosen], good.stars);
}

/** Never both stars of the good pair first: the first two would then always be right. */
function inOrder(
  random: Random,
  hips: readonly number[],
  good: readonly [number, number],
): number[] {
  const order = random.shuffle(hips);
  const [first, second] = order;
  const bothFirst =
    first !== undefined && second !== undefined && good.includes(first) && good.includes(second);
  return bothFirst ? [first, ...order.slice(2), second] : order;
}
