import { declinationAt } from '../../../clock/declination';
import { instantOfLocalTime } from '../../../sky/local-time';
import type { StarCatalogue } from '../../../sky/catalogue';
import type { Scenario } from '../../../pointing/scenario';
import { generateRunVariant } from '../../generate-run-variant';
import { randomFrom } from '../../random';
import { runKitOf } from '../../run-kit';
import type { BenchTaskInput } from '../bench-variant';
import { drawEveningEvents } from './draw-evening-events';
import { drawRehearsalBenches } from './draw-rehearsal-benches';
import type { DressRehearsalTemplate, DressRehearsalVariant } from './dress-rehearsal-variant';

/** Goes up whenever the same seed could make another task. */
const generatorVersion = 1;

/** Of sky time, where the evening is short; a practised pair of hands needs half of it. */
const hurriedMinutes = 15;

/**
 * One student's evening: a night on which an alignment can go well (as the alignment run's own generator
 * sees to), a telescope with its own small errors, and a bench for each stage, made by that stage's lab.
 * The same input makes the same task.
 *
 * @throws {RangeError} when the scenario's local time is none: `parseScenario` refuses those.
 */
export function generateDressRehearsal({
  catalogue,
  ...input
}: BenchTaskInput<DressRehearsalTemplate> & {
  catalogue: StarCatalogue;
}): DressRehearsalVariant {
  const { seed, templates, kit, windowMinutes } = input;
  const random = randomFrom(seed);
  const template = random.pick(templates);
  if (template === undefined) throw new Error('a task needs at least one template to be made of');
  const run = generateRunVariant({
    seed: `${seed} run`,
    scenario: input.scenario,
    templates: ['own-choice'],
    windowMinutes,
    catalogue,
    kit: runKitOf(kit),
    declinationDeg: declinationOf(input.scenario),
  });
  const { scenario, frame, nakedEyeLimit, catalogueVersion, thirdHips } = run;
  const { errors, backlashArcmin, finalApproach, encoderStepArcsec } = run.setup;
  const { slewDegPerSecond, declinationDeg } = run.setup;
  return {
    lab: 'dress-rehearsal',
    template,
    generatorVersion,
    kitName: kit.name,
    catalogueVersion,
    scenario,
    frame,
    nakedEyeLimit,
    thirdHips,
    kit: run.kit,
    telescope: {
      errors,
      backlashArcmin,
      finalApproach,
      encoderStepArcsec,
      slewDegPerSecond,
      declinationDeg,
    },
    events: drawEveningEvents(random, template),
    // The evening itself has been moved already: every bench is of that one.
    ...drawRehearsalBenches(random, template, { seed, scenario, kit, windowMinutes: 0 }),
    minutesAllowed: template === 'hurried-evening' ? hurriedMinutes : null,
  };
}

/** Years that no model of the Earth's field covers have a compass that tells true north. */
function declinationOf({ place, localTime, timeZone }: Scenario): number {
  const time = instantOfLocalTime(localTime, timeZone);
  const declination = time.ok ? declinationAt(place, time.instant) : null;
  return declination?.ok === true ? declination.declinationDeg : 0;
}
