import type { StarCatalogue } from '../sky/catalogue';
import type { Scenario } from '../pointing/scenario';
import {
  defaultWindowMinutes,
  movedEvenings,
  nearestCandidate,
  tries,
  type MovedEvenings,
} from './moved-evenings';
import { candidateOf, type PairCandidate } from './pair-candidates';
import type { PairTemplate, PairVariant } from './pair-variant';
import { randomFrom } from './random';

/** Goes up whenever the same seed could give another variant. */
export const pairGeneratorVersion = 2;

/**
 * One student's variant of "Pick the pair": a template, the scenario moved within the teacher's window,
 * clouds, given star or proposals, each checked by the engine to have a right answer and a tempting
 * wrong one. The same input gives the same variant. Where the night cannot make the template, the
 * variant says which one it became; in the end that nothing will do tonight.
 *
 * @throws {RangeError} when the scenario's local time is none: `parseScenario` refuses those.
 */
export function generatePairVariant(input: {
  /** Hex of an HMAC, or any text. */
  seed: string;
  scenario: Scenario;
  templates: readonly PairTemplate[];
  windowMinutes?: number;
  catalogue: StarCatalogue;
}): PairVariant {
  const { seed, scenario, catalogue, windowMinutes = defaultWindowMinutes } = input;
  const random = randomFrom(seed);
  const evenings = movedEvenings(scenario, windowMinutes, random, catalogue);
  const target = candidateOf('free-pair', random, evenings.base())?.chance ?? null;

  const wanted: readonly PairTemplate[] =
    input.templates.length === 0 ? ['free-pair'] : input.templates;
  for (const template of new Set<PairTemplate>([...random.shuffle(wanted), 'free-pair'])) {
    const candidate = nearestCandidate(evenings.moved, target, (evening) =>
      candidateOf(template, random, evening),
    );
    if (candidate !== null) return written(candidate, catalogue);
  }
  return written(lastResort(evenings.moved), catalogue);
}

/** What can always be asked: which pair, or, when no evening has any, whether there is one. */
function lastResort(moved: MovedEvenings['moved']): PairCandidate {
  const nights = Array.from({ length: tries }, (_, attempt) => moved(attempt).night);
  const withPairs = nights.find((one) => one.pairs.length > 0);
  return {
    template: withPairs === undefined ? 'none-usable' : 'free-pair',
    night: withPairs ?? moved(0).night,
    givenHip: null,
    proposals: null,
    chance: null,
  };
}

function written(
  { template, night, givenHip, proposals }: PairCandidate,
  catalogue: StarCatalogue,
): PairVariant {
  return {
    lab: 'pick-the-pair',
    generatorVersion: pairGeneratorVersion,
    catalogueVersion: catalogue.version,
    template,
    scenario: night.scenario,
    frame: night.frame,
    nakedEyeLimit: night.nakedEyeLimit,
    givenHip,
    proposals,
  };
}
