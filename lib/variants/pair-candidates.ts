import { geometryFullMark, geometryMark } from '../pointing/pair-mark';
import type { AnswerKeyPair } from '../pointing/answer-key';
import type { CloudPatch } from '../pointing/scenario';
import { chanceScore } from './chance-score';
import { cloudBank, countInView, overcast } from './cloud-banks';
import type { Night, WeighedStar } from './night';
import type { PairTemplate } from './pair-variant';
import { proposeStars } from './propose-stars';
import type { Random } from './random';

/** What a variant could be made of, with how hard it is. Not yet a learner's task. */
export type PairCandidate = {
  template: PairTemplate;
  night: Night;
  givenHip: number | null;
  proposals: readonly number[] | null;
  /** Null where there is nothing to choose from. */
  chance: number | null;
};

type Evening = { night: Night; withClouds: (clouds: readonly CloudPatch[]) => Night };

/** Makes one template out of an evening; null when this evening does not have what it takes. */
export function candidateOf(
  template: PairTemplate,
  random: Random,
  evening: Evening,
): PairCandidate | null {
  switch (template) {
    case 'free-pair':
      return freePair(evening.night);
    case 'partner':
      return partner(random, evening.night);
    case 'cloud-bank':
      return bankOfCloud(random, evening);
    case 'mount-proposes':
      return mountProposes(random, evening.night);
    case 'none-usable':
      return noneUsable(random, evening);
  }
}

/** Half the marks for geometry or less: a choice that was worth thinking about. */
const isWeak = (pair: AnswerKeyPair, bestHitRate: number): boolean =>
  geometryMark(pair.hitRate, bestHitRate) < geometryFullMark / 2;

/** Something that looks right and is not: a star in view that will not do, or a weak pair. */
function hasTemptation(stars: readonly WeighedStar[], pairs: readonly AnswerKeyPair[]): boolean {
  const best = pairs[0]?.hitRate ?? 0;
  return stars.some((star) => !star.usable) || pairs.some((pair) => isWeak(pair, best));
}

function freePair(night: Night): PairCandidate | null {
  if (night.pairs.length === 0 || !hasTemptation(night.tempting, night.pairs)) return null;
  return {
    template: 'free-pair',
    night,
    givenHip: null,
    proposals: null,
    chance: chanceScore(night.tempting, night.pairs, null),
  };
}

function partner(random: Random, night: Night): PairCandidate | null {
  const best = night.pairs[0]?.hitRate ?? 0;
  const givable = night.usable.filter((star) => {
    const partners = night.pairs.filter((pair) => pair.stars.includes(star.hip));
    const [bestPartner] = partners;
    return (
      !star.hasCaution &&
      bestPartner !== undefined &&
      bestPartner.hitRate >= 0.9 * best &&
      partners.some((pair) => isWeak(pair, bestPartner.hitRate))
    );
  });
  const given = random.pick(givable);
  if (given === undefined) return null;
  const pairs = night.pairs.filter((pair) => pair.stars.includes(given.hip));
  return {
    template: 'partner',
    night,
    givenHip: given.hip,
    proposals: null,
    chance: chanceScore(night.tempting, pairs, given.hip),
  };
}

function bankOfCloud(random: Random, { night: clear, withClouds }: Evening): PairCandidate | null {
  const night = withClouds(cloudBank(random, clear.scenario.clouds));
  const hidden = clear.usable.length - night.usable.length;
  const usable = new Set(night.usable.map((star) => star.hip));
  // The bank must matter: the best pair of the clear evening is no longer to be had.
  const bestHidden = clear.pairs[0]?.stars.some((hip) => !usable.has(hip)) === true;
  if (hidden < 2 || !bestHidden || night.pairs.length === 0) return null;
  if (!hasTemptation(night.tempting, night.pairs)) return null;
  return {
    template: 'cloud-bank',
    night,
    givenHip: null,
    proposals: null,
    chance: chanceScore(night.tempting, night.pairs, null),
  };
}

function mountProposes(random: Random, night: Night): PairCandidate | null {
  const proposals = proposeStars(random, night);
  if (proposals === null) return null;
  const stars = night.stars.filter((star) => proposals.includes(star.hip));
  const pairs = night.pairs.filter((pair) => pair.stars.every((hip) => proposals.includes(hip)));
  return {
    template: 'mount-proposes',
    night,
    givenHip: null,
    proposals,
    chance: chanceScore(stars, pairs, null),
  };
}

/** With fewer stars in view than this, the sky itself gives the answer away. */
const fewestInView = 6;
const fewestTempting = 2;

function noneUsable(random: Random, { night: clear, withClouds }: Evening): PairCandidate | null {
  const passing = random.integer(0, 1) === 0 ? 0 : 1;
  const usableAtLimit = clear.stars.filter((star) => star.usableAtLimit).length;
  const night =
    usableAtLimit <= 1 ? clear : overcast(random, clear.scenario.clouds, passing, withClouds);
  if (night === null || countInView(night) < fewestInView) return null;
  if (night.tempting.length < fewestTempting) return null;
  return { template: 'none-usable', night, givenHip: null, proposals: null, chance: null };
}
