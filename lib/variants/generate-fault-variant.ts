import type { RunKit } from '../alignment/setup';
import { faultIds, type FaultId } from '../faults/fault-ids';
import { faultOf } from '../faults/faults';
import type { Scenario } from '../pointing/scenario';
import type { StarCatalogue } from '../sky/catalogue';
import { faultCandidate, openLooks, type FaultCandidate } from './fault-candidates';
import { drawOptions } from './fault-options';
import {
  faultTemplates,
  type FaultAnswerKey,
  type FaultTemplate,
  type FaultVariant,
} from './fault-variant';
import { movedEvenings, tries, defaultWindowMinutes } from './moved-evenings';
import { randomFrom, type Random } from './random';

/** Goes up whenever the same seed could give another variant. */
export const faultGeneratorVersion = 2;

/** Evenings drawn for one fault before another one is tried: few have a planet beside the star. */
const drawsForAFault = 6;

/**
 * One student's "What went wrong?" with its answer key: an evening within the teacher's window on which
 * one fault, drawn evenly, is run through the engine. The same input gives the same variant. Any site,
 * date and kit: where a fault cannot happen or would not show, another one takes its place.
 *
 * @throws {RangeError} when the scenario's local time is none: `parseScenario` refuses those.
 */
export function generateFaultVariant(input: {
  /** Hex of an HMAC, or any text. */
  seed: string;
  scenario: Scenario;
  /** None means all of them. */
  templates: readonly FaultTemplate[];
  windowMinutes?: number;
  catalogue: StarCatalogue;
  kit: RunKit;
}): { variant: FaultVariant; answerKey: FaultAnswerKey } {
  const { seed, scenario, catalogue, kit, windowMinutes = defaultWindowMinutes } = input;
  const random = randomFrom(seed);
  const { moved } = movedEvenings(scenario, windowMinutes, random, catalogue);
  const wanted = input.templates.length === 0 ? faultTemplates : input.templates;
  // The teacher's kinds first; the others only where a sky would leave a student without a task.
  for (const template of new Set([...random.shuffle(wanted), ...faultTemplates])) {
    for (const fault of random.shuffle<FaultId>(faultIds)) {
      for (let draw = 0; draw < drawsForAFault; draw++) {
        const { night } = moved(draw % tries);
        const candidate = faultCandidate({ template, fault, random, night, catalogue, kit });
        if (candidate !== null) return written(candidate, random, catalogue, kit);
      }
    }
  }
  throw new Error('no fault shows on any evening: the sky holds no two stars');
}

function written(
  { template, fault, night, shown, compared }: FaultCandidate,
  random: Random,
  catalogue: StarCatalogue,
  kit: RunKit,
): { variant: FaultVariant; answerKey: FaultAnswerKey } {
  const options = drawOptions(random, compared);
  const alike = compared.filter((one) => one.alike).map((one) => one.fault);
  const others = compared.filter(
    (one) => one.fault !== fault && options.faults.includes(one.fault),
  );
  return {
    variant: {
      lab: 'what-went-wrong',
      generatorVersion: faultGeneratorVersion,
      catalogueVersion: catalogue.version,
      template,
      scenario: night.scenario,
      frame: night.frame,
      nakedEyeLimit: night.nakedEyeLimit,
      kit,
      evidence: shown.evidence,
      open: openLooks[template],
      testSlews: shown.testSlews,
      ...options,
    },
    answerKey: {
      lab: 'what-went-wrong',
      fault,
      alike,
      cures: Object.fromEntries(alike.map((id) => [id, faultOf(id).cures])),
      tellTales: Object.fromEntries(
        compared.flatMap(({ fault: id, tellTale }) =>
          tellTale !== null && options.faults.includes(id) ? [[id, tellTale]] : [],
        ),
      ),
      testSlewsIf: Object.fromEntries(others.map((one) => [one.fault, one.testSlews])),
    },
  };
}
