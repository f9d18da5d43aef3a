import type { RunInput } from '../../../alignment/run-input';
import { starSeenAt } from '../../../alignment/run-sky';
import type { RunSetup } from '../../../alignment/setup';
import { eveningSetup } from '../../../rehearsal/evening-setup';
import { slipsHandedOn, type NotReady } from '../../../rehearsal/handed-on';
import { noSlips, type Slips } from '../../../rehearsal/slips';
import type { StarCatalogue } from '../../../sky/catalogue';
import { azAltFromDirection } from '../../../units/vector';
import type { DressRehearsalVariant } from '../../../variants/bench/dress-rehearsal/dress-rehearsal-variant';
import { runGeneratorVersion } from '../../../variants/generate-run-variant';
import type { RunVariant } from '../../../variants/run-variant';
import type { DressRehearsalSubmission } from './dress-rehearsal-submission';
import { handedOnBy } from './rehearsal-handed-on';

export type RehearsalRun =
  | { ok: true; variant: RunVariant; input: RunInput; slips: Slips }
  /** The computer is not ready for it: back to the stage that it comes from. */
  | { ok: false; reason: NotReady };

/** Where no pair is planned, the tube is taken to look here: creep changes little between. */
const middleAltitudeDeg = 45;

/** The alignment run of an evening, on a telescope as the benches have left it. */
export function rehearsalRun(
  rehearsal: DressRehearsalVariant,
  work: Pick<DressRehearsalSubmission, 'benches' | 'clutchesLocked' | 'plannedPair'>,
  catalogue: StarCatalogue,
): RehearsalRun {
  const { frame, scenario, telescope } = rehearsal;
  const { latitudeDeg } = scenario.place;
  const sky = { frame, latitudeDeg, catalogue };
  const altitudeDeg = (hip: number | null): number => {
    const direction = hip === null ? null : starSeenAt(sky, hip, 0);
    return direction === null ? middleAltitudeDeg : azAltFromDirection(direction).altitudeDeg;
  };
  const handed = slipsHandedOn(handedOnBy(rehearsal, work), rehearsal.events, [
    altitudeDeg(work.plannedPair.first),
    altitudeDeg(work.plannedPair.second),
  ]);
  if (!handed.ok) return handed;
  const setup = eveningSetup(handed.slips, telescope, { frame, latitudeDeg });
  const variant = runVariantOf(rehearsal, setup);
  return { ok: true, variant, input: { ...variant, catalogue }, slips: handed.slips };
}

/** The same task before anything was set up: what judges a choice of stars needs no more. */
export const runBeforeSetUp = (rehearsal: DressRehearsalVariant): RunVariant => {
  const { frame, telescope, scenario } = rehearsal;
  const { latitudeDeg } = scenario.place;
  return runVariantOf(rehearsal, eveningSetup(noSlips, telescope, { frame, latitudeDeg }));
};

const runVariantOf = (
  {
    catalogueVersion,
    scenario,
    frame,
    nakedEyeLimit,
    kit,
    thirdHips,
    minutesAllowed,
  }: DressRehearsalVariant,
  setup: RunSetup,
): RunVariant => ({
  lab: 'alignment-run',
  generatorVersion: runGeneratorVersion,
  template: 'own-choice',
  catalogueVersion,
  scenario,
  frame,
  nakedEyeLimit,
  kit,
  setup,
  thirdHips,
  minutesAllowed,
  givenHip: null,
  proposals: null,
  mayPause: true,
});
