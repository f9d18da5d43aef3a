import { loadCatalogue } from '@/lib/content/sky-catalogue';
import type { AnswerKey } from '@/lib/pointing/answer-key';
import { scenarioSchema, type Scenario } from '@/lib/pointing/scenario';
import { nakedEyeLimitOf } from '@/lib/pointing/seen-sky';
import { storedAnswerKey } from '@/lib/pointing/stored-answer-key';
import { skyFrameAt } from '@/lib/sky/frame-at';
import { instantOfLocalTime } from '@/lib/sky/local-time';
import type { PairVariant } from '@/lib/variants/pair-variant';

/** Ottawa, a dark December evening, the kit Wren; all else by default. */
export const eveningJson = {
  place: { latitudeDeg: 45.4, longitudeDeg: -75.7, elevationM: 70 },
  localTime: '2026-12-05T19:30',
  timeZone: 'America/Toronto',
  telescope: {
    focalLengthMm: 500,
    apertureMm: 80,
    computer: 'solved-zero',
    centringArcmin: 7.5,
    altitudeZeroArcmin: 30,
    coneArcmin: 8,
    axisSkewArcmin: 4,
  },
  eyepiece: { focalLengthMm: 9, apparentFieldDeg: 50 },
};

/** A scenario by default that of {@link eveningJson}, with some of its fields replaced. */
export const eveningScenario = (changes: object = {}): Scenario =>
  scenarioSchema.parse({ ...eveningJson, ...changes });

export function frameOf(scenario: Scenario) {
  const time = instantOfLocalTime(scenario.localTime, scenario.timeZone);
  if (!time.ok) throw new Error(`not a time: ${time.reason}`);
  return skyFrameAt({ instant: time.instant, place: scenario.place });
}

/** A variant of the evening and its stored answer key. */
export function eveningVariant(
  changes: object = {},
  task: Partial<Pick<PairVariant, 'template' | 'givenHip' | 'proposals'>> = {},
): { variant: PairVariant; answerKey: AnswerKey } {
  const scenario = eveningScenario(changes);
  const frame = frameOf(scenario);
  const catalogue = loadCatalogue();
  return {
    variant: {
      lab: 'pick-the-pair',
      generatorVersion: 1,
      catalogueVersion: catalogue.version,
      template: 'free-pair',
      scenario,
      frame,
      nakedEyeLimit: nakedEyeLimitOf(scenario, frame),
      givenHip: null,
      proposals: null,
      ...task,
    },
    answerKey: storedAnswerKey({ scenario, instant: frame.instant, frame, catalogue }),
  };
}
