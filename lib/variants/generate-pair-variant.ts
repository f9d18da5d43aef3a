import type { StarCatalogue } from '../sky/catalogue';
import { instantOfLocalTime } from '../sky/local-time';
import type { Scenario } from '../pointing/scenario';
import { nightAt } from './night';
import { candidateOf, type PairCandidate } from './pair-candidates';
import type { PairTemplate, PairVariant } from './pair-variant';
import { randomFrom, type Random } from './random';

/** Goes up whenever the same seed could give another variant. */
export const pairGeneratorVersion = 2;

/** How far the teacher's instant is moved at most unless the teacher says otherwise. */
export const defaultWindowMinutes = 40;

/** Moved evenings that one seed looks at. */
const tries = 8;
/** Draws of given star, clouds or proposals from them before the nearest to the window is taken. */
const draws = 3 * tries;
/** Variants of one family differ by at most this in what blind picking earns, where the sky allows. */
export const difficultyHalfWidth = 0.12;

type Evening = ReturnType<typeof nightAt>;

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
  const time = instantOfLocalTime(scenario.localTime, scenario.timeZone);
  if (!time.ok) throw new RangeError(`not a local time: ${scenario.localTime}`);
  const random = randomFrom(seed);
  const evenings = movedEvenings(
    scenario,
    Date.parse(time.instant),
    windowMinutes,
    random,
    catalogue,
  );
  const target = candidateOf('free-pair', random, evenings.base())?.chance ?? null;

  const wanted: readonly PairTemplate[] =
    input.templates.length === 0 ? ['free-pair'] : input.templates;
  for (const template of new Set<PairTemplate>([...random.shuffle(wanted), 'free-pair'])) {
    const candidate = nearestCandidate(template, random, evenings.moved, target);
    if (candidate !== null) return written(candidate, catalogue);
  }
  return written(lastResort(evenings.moved), catalogue);
}

function movedEvenings(
  scenario: Scenario,
  baseMs: number,
  windowMinutes: number,
  random: Random,
  catalogue: StarCatalogue,
) {
  const made = new Map<number, Evening>();
  const at = (minutes: number): Evening => {
    const evening =
      made.get(minutes) ??
      nightAt(scenario, new Date(baseMs + minutes * 60_000).toISOString(), catalogue);
    made.set(minutes, evening);
    return evening;
  };
  const offsets = Array.from({ length: tries }, () =>
    random.integer(-Math.floor(windowMinutes), Math.floor(windowMinutes)),
  );
  return { base: () => at(0), moved: (attempt: number) => at(offsets[attempt] ?? 0) };
}

/** The first candidate within the family's difficulty window, else the one nearest to it. */
function nearestCandidate(
  template: PairTemplate,
  random: Random,
  moved: (attempt: number) => Evening,
  target: number | null,
): PairCandidate | null {
  let nearest: PairCandidate | null = null;
  let distance = Infinity;
  for (let draw = 0; draw < draws; draw++) {
    const candidate = candidateOf(template, random, moved(draw % tries));
    if (candidate === null) continue;
    const off =
      target === null || candidate.chance === null ? 0 : Math.abs(candidate.chance - target);
    if (off <= difficultyHalfWidth) return candidate;
    if (off < distance) [nearest, distance] = [candidate, off];
  }
  return nearest;
}

/** What can always be asked: which pair, or, when no evening has any, whether there is one. */
function lastResort(moved: (attempt: number) => Evening): PairCandidate {
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
