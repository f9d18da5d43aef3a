import { bestStars } from '@/lib/alignment/operator-stars';
import { perfectLog, type OperatorOptions } from '@/lib/alignment/perfect-operator';
import { loadCatalogue, loadKits } from '@/lib/content/sky-catalogue';
import { benchKitFor } from '@/lib/data/lab-tasks/bench/bench-kit-for';
import type { DressRehearsalResult } from '@/lib/grading/bench/dress-rehearsal/dress-rehearsal-result';
import type { DressRehearsalSubmission } from '@/lib/grading/bench/dress-rehearsal/dress-rehearsal-submission';
import { dressRehearsalModelAnswer } from '@/lib/grading/bench/dress-rehearsal/dress-rehearsal-model-answer';
import { gradeDressRehearsal } from '@/lib/grading/bench/dress-rehearsal/grade-dress-rehearsal';
import { rehearsalRun } from '@/lib/grading/bench/dress-rehearsal/rehearsal-run';
import type {
  DressRehearsalTemplate,
  DressRehearsalVariant,
} from '@/lib/variants/bench/dress-rehearsal/dress-rehearsal-variant';
import { generateDressRehearsal } from '@/lib/variants/bench/dress-rehearsal/generate-dress-rehearsal';
import { eveningScenario } from './evening';

export const catalogue = loadCatalogue();

/** Dark in winter, in spring, in the south and far north; all in December. */
const places = [
  { latitudeDeg: 45.4, longitudeDeg: -75.7, elevationM: 70, timeZone: 'America/Toronto' },
  { latitudeDeg: 51.5, longitudeDeg: -0.1, elevationM: 30, timeZone: 'Europe/London' },
  { latitudeDeg: -33.9, longitudeDeg: 18.5, elevationM: 20, timeZone: 'Africa/Johannesburg' },
  { latitudeDeg: 63.4, longitudeDeg: 10.4, elevationM: 10, timeZone: 'Europe/Oslo' },
];

/** An evening of a kind, by number: kit and place go round. */
export function rehearsalOf(
  template: DressRehearsalTemplate,
  number: number,
): DressRehearsalVariant {
  const kits = loadKits();
  const kit = kits[number % kits.length];
  const { timeZone, ...place } = places[number % places.length] ?? { timeZone: 'UTC' };
  const eyepiece = kit?.eyepieces.find(({ id }) => id === kit.observingEyepieceId);
  if (kit === undefined || eyepiece === undefined) throw new Error('no kit with an eyepiece');
  const { focalLengthMm, apparentFieldDeg } = eyepiece;
  const scenario = eveningScenario({
    place,
    timeZone,
    localTime: '2026-12-05T22:30',
    telescope: kit.telescope,
    eyepiece: { focalLengthMm, apparentFieldDeg },
  });
  return generateDressRehearsal({
    seed: `${template} ${number}`,
    scenario,
    templates: [template],
    windowMinutes: 40,
    kit: benchKitFor(kit.id, scenario),
    catalogue,
  });
}

/** The evening of somebody who makes no mistake but for what is changed; the run is steered anew on it. */
export function rehearsed(
  variant: DressRehearsalVariant,
  change: (model: DressRehearsalSubmission) => Partial<DressRehearsalSubmission> = () => ({}),
  options: OperatorOptions = {},
): DressRehearsalSubmission {
  const model = dressRehearsalModelAnswer({ variant, catalogue });
  const work = { ...model, ...change(model) };
  const run = rehearsalRun(variant, work, catalogue);
  if (!run.ok) return { ...work, log: [] };
  const stars = bestStars(run.input);
  return { ...work, log: perfectLog(run.input, stars, options) };
}

export function markOf(
  variant: DressRehearsalVariant,
  submission: DressRehearsalSubmission,
): DressRehearsalResult {
  const grading = gradeDressRehearsal({ variant, submission, catalogue });
  if (!grading.ok) throw new Error(`refused: ${grading.refusal.code}`);
  return grading.result;
}
