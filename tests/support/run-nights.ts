import { bestStars, type OperatorStars } from '@/lib/alignment/operator-stars';
import type { RunInput } from '@/lib/alignment/run-input';
import { loadCatalogue, loadKits, type Kit } from '@/lib/content/sky-catalogue';
import type { AnswerKey } from '@/lib/pointing/answer-key';
import { scenarioSchema, type Scenario } from '@/lib/pointing/scenario';
import { storedAnswerKey } from '@/lib/pointing/stored-answer-key';
import { skyFrameAt } from '@/lib/sky/frame-at';
import type { SkyFrame } from '@/lib/sky/sky-frame';
import { localTimeOfInstant } from '@/lib/sky/local-time';
import { randomFrom, type Random } from '@/lib/variants/random';
import { generateRunVariant } from '@/lib/variants/generate-run-variant';
import { runKitOf } from '@/lib/variants/run-kit';
import { drawRunSetup } from '@/lib/variants/run-setup';
import { runTemplates, type RunTemplate, type RunVariant } from '@/lib/variants/run-variant';

const catalogue = loadCatalogue();
const computers = ['solved-zero', 'fixed-zero'] as const;

/** One drawn evening with its telescope, and the pair that is best on it. */
export type RunNight = {
  variant: RunVariant;
  answerKey: AnswerKey;
  input: RunInput;
  best: readonly [number, number];
};

/** A scenario with one of our telescopes; an index switch sets a fixed zero to 10′ (design, defaults). */
export function runScenario(
  kit: Kit,
  computer: (typeof computers)[number],
  where: { latitudeDeg: number; longitudeDeg: number; instant: string },
): Scenario {
  const eyepiece = kit.eyepieces.find(({ id }) => id === kit.observingEyepieceId);
  if (eyepiece === undefined) throw new Error(`${kit.id} has no observing eyepiece`);
  const { focalLengthMm, apparentFieldDeg } = eyepiece;
  const { altitudeZeroArcmin } = kit.telescope;
  return scenarioSchema.parse({
    place: { latitudeDeg: where.latitudeDeg, longitudeDeg: where.longitudeDeg },
    localTime: localTimeOfInstant(where.instant, 'UTC'),
    timeZone: 'UTC',
    telescope: {
      ...kit.telescope,
      computer,
      altitudeZeroArcmin: computer === 'fixed-zero' ? 10 : altitudeZeroArcmin,
    },
    eyepiece: { focalLengthMm, apparentFieldDeg },
  });
}

/** A variant of the learner's own choice under a given sky, with its hidden errors drawn. */
export function runNightOf(
  random: Random,
  kit: Kit,
  scenario: Scenario,
  frame: SkyFrame,
  declinationDeg = 0,
): RunNight | null {
  const answerKey = storedAnswerKey({ scenario, instant: frame.instant, frame, catalogue });
  const best = answerKey.pairs.find(({ expectedErrorArcmin }) => expectedErrorArcmin !== null);
  if (best === undefined) return null;
  const variant: RunVariant = {
    lab: 'alignment-run',
    generatorVersion: 1,
    catalogueVersion: catalogue.version,
    template: 'own-choice',
    scenario,
    frame,
    nakedEyeLimit: answerKey.nakedEyeLimit,
    kit: runKitOf(kit),
    setup: drawRunSetup({ random, scenario, frame, declinationDeg }),
    givenHip: null,
    proposals: null,
    thirdHips: answerKey.stars
      .filter(({ usable, hip }) => usable && !best.stars.includes(hip))
      .map(({ hip }) => hip)
      .slice(0, 3),
    minutesAllowed: null,
    mayPause: false,
  };
  return { variant, answerKey, input: { ...variant, catalogue }, best: best.stars };
}

/**
 * Of each kind of run in turn as the product makes it (where the sky has what it takes), with a needle
 * that points up to 30° off; of the learner's own choice with whatever telescope is drawn, good or bad.
 */
function mixedNightOf(
  random: Random,
  kit: Kit,
  scenario: Scenario,
  frame: SkyFrame,
  template: RunTemplate,
): RunNight | null {
  const declinationDeg = random.between(-30, 30);
  if (template === 'own-choice') return runNightOf(random, kit, scenario, frame, declinationDeg);
  const variant = generateRunVariant({
    seed: `${template} ${String(random.next())}`,
    scenario,
    templates: [template],
    windowMinutes: 0,
    catalogue,
    declinationDeg,
    kit: runKitOf(kit),
  });
  const input = { ...variant, catalogue };
  const best: OperatorStars | null = bestStars(input);
  if (best === null) return null;
  const { frame: sky, scenario: moved } = variant;
  const answerKey = storedAnswerKey({
    scenario: moved,
    frame: sky,
    catalogue,
    instant: sky.instant,
  });
  return { variant, answerKey, input, best };
}

/**
 * Dark nights spread over a year and the longitudes, the three telescopes and both computers in turn.
 * Latitudes in degrees, evenly between the two; where a summer's night has no dark, another is drawn.
 * By default of the learner's own choice and where the needle points north; else of every kind.
 */
export function* randomRunNights(
  seed: string,
  count: number,
  [fromDeg, toDeg]: readonly [number, number],
  kinds: 'own-choice' | 'mixed' = 'own-choice',
): Generator<RunNight> {
  const random = randomFrom(seed);
  const kits = loadKits();
  for (let made = 0; made < count;) {
    const where = {
      latitudeDeg: random.between(fromDeg, toDeg),
      longitudeDeg: random.between(-180, 180),
      instant: new Date(
        Date.UTC(2026, 0, 1) + Math.floor(random.between(0, 525_600)) * 60_000,
      ).toISOString(),
    };
    const frame = skyFrameAt({ instant: where.instant, place: { ...where, elevationM: 0 } });
    if (frame.sun.trueAltitudeDeg > -12) continue;
    const kit = kits[made % kits.length];
    const computer = computers[Math.floor(made / kits.length) % computers.length];
    if (kit === undefined || computer === undefined) throw new Error('no kit or computer');
    const scenario = runScenario(kit, computer, where);
    const template = runTemplates[made % runTemplates.length] ?? 'own-choice';
    const night =
      kinds === 'mixed'
        ? mixedNightOf(random, kit, scenario, frame, template)
        : runNightOf(random, kit, scenario, frame);
    if (night === null) continue;
    made++;
    yield night;
  }
}
