import { perfectOutcome, worthOfAlignment } from '../alignment/alignment-worth';
import type { RunInput } from '../alignment/run-input';
import { believedSky, starSeenAt } from '../alignment/run-sky';
import type { RunKit } from '../alignment/setup';
import { standOf, truthAtStart } from '../alignment/start-position';
import { sunRiseAltitudeDeg } from '../alignment/sun-distance';
import type { MountTruth } from '../pointing/achieved-errors';
import type { AnswerKeyPair } from '../pointing/answer-key';
import { mountDirection } from '../pointing/mount';
import type { Scenario } from '../pointing/scenario';
import type { StarCatalogue } from '../sky/catalogue';
import { transform, transpose } from '../units/matrix';
import { azAltFromDirection, separationDeg } from '../units/vector';
import type { Decoy } from './decoys';
import {
  defaultWindowMinutes,
  movedEvenings,
  movedToServe,
  nearestCandidate,
  tries,
  type MovedEvenings,
} from './moved-evenings';
import { candidateOf } from './pair-candidates';
import { randomFrom, type Random } from './random';
import type { Night } from './night';
import { runCandidateOf, type RunCandidate } from './run-candidates';
import { drawRunSetup } from './run-setup';
import type { RunTemplate, RunVariant } from './run-variant';
import { thirdStars } from './third-stars';

/** Goes up whenever the same seed could give another variant. */
export const runGeneratorVersion = 1;

export type RunVariantInput = {
  /** Hex of an HMAC, or any text. */
  seed: string;
  scenario: Scenario;
  /** None means the learner's own choice. */
  templates: readonly RunTemplate[];
  windowMinutes?: number;
  catalogue: StarCatalogue;
  kit: RunKit;
  /** How far a compass needle points east of north at the place, degrees. */
  declinationDeg: number;
  minutesAllowed?: number | null;
  mayPause?: boolean;
};

/**
 * One student's alignment run: a template, the scenario moved within the teacher's window, and a
 * telescope with hidden small errors. The engine has checked that it can be done right: a pair worth
 * full marks is within the task, and centred well it makes the computer agree and point well. The same
 * input gives the same variant. Where the evening cannot make the template, the variant says which one
 * it became. Evenings with the Sun up or without a usable pair are passed over while the window has
 * another; where it has none, it is the learner's own choice of what there is: `canBeRun` tells.
 *
 * @throws {RangeError} when the scenario's local time is none: `parseScenario` refuses those.
 */
export function generateRunVariant(input: RunVariantInput): RunVariant {
  const { seed, scenario, catalogue, windowMinutes = defaultWindowMinutes } = input;
  const random = randomFrom(seed);
  const evenings = movedEvenings(scenario, windowMinutes, random, catalogue);
  const moved = movedToServe(evenings, ({ night }) => canBeRun(night));
  const target = candidateOf('free-pair', random, evenings.base())?.chance ?? null;

  for (const template of new Set<RunTemplate>([...random.shuffle(input.templates), 'own-choice'])) {
    const candidate = nearestCandidate(moved, target, (evening) =>
      runCandidateOf(template, random, evening, catalogue),
    );
    const made = candidate && withRightWay(candidate, random, input);
    if (made !== null) return made;
  }
  return written(lastResort(moved), random, input);
}

/** Fewer targets than this in the eyepiece, of what the pair is expected to give, is bad luck to be redrawn. */
const leastOfExpected = 0.7;
const telescopes = 12;

/** With errors under which the best pair, centred well, points well. Null when no draw is such. */
function withRightWay(
  candidate: RunCandidate,
  random: Random,
  input: RunVariantInput,
): RunVariant | null {
  const [best] = pairsWithin(candidate);
  if (best === undefined) return null;
  for (let telescope = 0; telescope < telescopes; telescope++) {
    const variant = written(candidate, random, input);
    const run = { ...variant, catalogue: input.catalogue };
    const truth = truthAtStart(
      standOf(variant.setup),
      { azimuthDeg: 0, altitudeDeg: 0 },
      variant.setup.errors,
    );
    const [one, other] = best.stars;
    const stars = [
      { hip: one, atMs: 0 },
      { hip: other, atMs: 0 },
    ] as const;
    const outcome = perfectOutcome(run, stars, truth);
    const worth = outcome && worthOfAlignment(run, outcome, truth);
    if (worth === null || worth.hitRate < leastOfExpected * best.hitRate) continue;
    if (candidate.decoy === null || landsOn(candidate.decoy, run, truth)) return variant;
  }
  return null;
}

/** Whether the first slew of a telescope that was started as it should be ends nearer to the decoy. */
function landsOn({ star, decoy }: Decoy, run: RunInput, truth: MountTruth): boolean {
  const believed = starSeenAt(believedSky(run), star.hip, 0);
  if (believed === null) return false;
  const landing = transform(
    transpose(truth.base),
    mountDirection(azAltFromDirection(believed), truth.errors),
  );
  return separationDeg(landing, decoy.direction) < separationDeg(landing, star.direction);
}

/** The pairs that the task lets a learner align on, best first. */
function pairsWithin({ night, givenHip, proposals }: RunCandidate): readonly AnswerKeyPair[] {
  return night.pairs.filter(
    ({ stars }) =>
      (givenHip === null || stars.includes(givenHip)) &&
      (proposals === null || stars.every((hip) => proposals.includes(hip))),
  );
}

/** Whether a run can go well: nobody steers a telescope by day, and two stars have to do. */
export const canBeRun = ({ frame, pairs }: Pick<Night, 'frame' | 'pairs'>): boolean =>
  frame.sun.trueAltitudeDeg <= sunRiseAltitudeDeg && pairs.length > 0;

/** What can always be asked: to make the best of what the evening has. */
function lastResort(moved: MovedEvenings['moved']): RunCandidate {
  const nights = Array.from({ length: tries }, (_, attempt) => moved(attempt).night);
  return {
    template: 'own-choice',
    night: nights.find((one) => one.pairs.length > 0) ?? moved(0).night,
    givenHip: null,
    proposals: null,
    chance: null,
    decoy: null,
  };
}

function written(
  { template, night, givenHip, proposals, decoy }: RunCandidate,
  random: Random,
  { catalogue, kit, declinationDeg, minutesAllowed = null, mayPause = false }: RunVariantInput,
): RunVariant {
  const { scenario, frame, nakedEyeLimit } = night;
  return {
    lab: 'alignment-run',
    generatorVersion: runGeneratorVersion,
    catalogueVersion: catalogue.version,
    template,
    scenario,
    frame,
    nakedEyeLimit,
    kit,
    setup: drawRunSetup({ random, scenario, frame, declinationDeg, bent: decoy?.bent ?? null }),
    givenHip,
    proposals,
    thirdHips: thirdStars(night, givenHip),
    minutesAllowed,
    mayPause,
  };
}
