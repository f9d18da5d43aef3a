import type { StarCatalogue } from '../sky/catalogue';
import { chanceScore } from './chance-score';
import { cloudBank } from './cloud-banks';
import { decoysOf, type Decoy } from './decoys';
import { proposeBehindThings } from './in-the-way';
import type { Evening } from './moved-evenings';
import type { Night } from './night';
import { candidateOf, type PairCandidate } from './pair-candidates';
import type { Random } from './random';
import type { RunTemplate } from './run-variant';

/** What a run could be made of, before the telescope's hidden errors are drawn. */
export type RunCandidate = {
  template: RunTemplate;
  night: Night;
  givenHip: number | null;
  proposals: readonly number[] | null;
  chance: number | null;
  /** In 'decoy': what the first slew is to land on, and the slips that lead there. */
  decoy: Decoy | null;
};

/** Makes one kind of run out of an evening; null when this evening does not have what it takes. */
export function runCandidateOf(
  template: RunTemplate,
  random: Random,
  evening: Evening,
  catalogue: StarCatalogue,
): RunCandidate | null {
  switch (template) {
    case 'own-choice':
      return asRun(template, candidateOf('free-pair', random, evening));
    case 'mount-proposes':
      return asRun(template, candidateOf('mount-proposes', random, evening));
    case 'first-given':
      return asRun(template, candidateOf('partner', random, evening));
    case 'in-the-way':
      return inTheWay(random, evening);
    case 'decoy':
      return decoyed(random, evening.night, catalogue);
  }
}

const asRun = (template: RunTemplate, candidate: PairCandidate | null): RunCandidate | null =>
  candidate && { ...candidate, template, decoy: null };

function inTheWay(random: Random, evening: Evening): RunCandidate | null {
  const cloudy = () => evening.withClouds(cloudBank(random, evening.night.scenario.clouds));
  // A skyline of the site's own first; where it hides nothing, a bank of cloud does.
  for (const nightOf of [() => evening.night, cloudy]) {
    const night = nightOf();
    const proposals = proposeBehindThings(random, night);
    if (proposals !== null) return proposed(night, proposals);
  }
  return null;
}

function proposed(night: Night, proposals: readonly number[]): RunCandidate {
  const stars = night.stars.filter((star) => proposals.includes(star.hip));
  const pairs = night.pairs.filter((pair) => pair.stars.every((hip) => proposals.includes(hip)));
  return {
    template: 'in-the-way',
    night,
    givenHip: null,
    proposals,
    chance: chanceScore(stars, pairs, null),
    decoy: null,
  };
}

function decoyed(random: Random, night: Night, catalogue: StarCatalogue): RunCandidate | null {
  const best = night.pairs[0]?.hitRate ?? 0;
  const partnersOf = (hip: number) => night.pairs.filter((pair) => pair.stars.includes(hip));
  const found = random.pick(
    decoysOf(night, catalogue).filter(
      ({ star }) => (partnersOf(star.hip)[0]?.hitRate ?? 0) >= 0.9 * best,
    ),
  );
  if (found === undefined) return null;
  const { hip } = found.star;
  return {
    template: 'decoy',
    night,
    givenHip: hip,
    proposals: null,
    chance: chanceScore(night.tempting, partnersOf(hip), hip),
    decoy: found,
  };
}
