import type { RunKit } from '../../../alignment/setup';
import type { Scenario } from '../../../pointing/scenario';
import type { OwnTelescope } from '../../../rehearsal/evening-setup';
import type { EveningEvents } from '../../../rehearsal/handed-on';
import type { BenchStage } from '../../../rehearsal/stages';
import type { SkyFrame } from '../../../sky/sky-frame';
import type { BalanceVariant } from '../balance/balance-variant';
import type { BenchVariant } from '../bench-variant';
import type { ClockAndPlaceVariant } from '../clock-and-place/clock-and-place-variant';
import type { FinderVariant } from '../finder/finder-variant';
import type { LevelVariant } from '../level/level-variant';
import type { PowerVariant } from '../power/power-variant';
import type { PutItTogetherVariant } from '../put-it-together/put-it-together-variant';

export const dressRehearsalTemplates = [
  /** Everything comes out of its box and is set up anew. */
  'from-the-boxes',
  /** Somebody set it up before, and made two slips. */
  'somebody-set-it-up',
  /** Wind, and people in the dark: somebody meets a leg. */
  'windy-evening',
  /** Frost: what the cells give has to be reckoned. */
  'cold-evening',
  /** Little time, and one stage that somebody has done already, not well. */
  'hurried-evening',
] as const;
export type DressRehearsalTemplate = (typeof dressRehearsalTemplates)[number];

/** The bench of each stage that has one: a task of its own lab, for the same evening and kit. */
export type RehearsalBenches = {
  'put-it-together': PutItTogetherVariant;
  level: LevelVariant;
  balance: BalanceVariant;
  finder: FinderVariant;
  power: PowerVariant;
  'clock-and-place': ClockAndPlaceVariant;
};

/** One student's "Dress rehearsal". */
export type DressRehearsalVariant = BenchVariant<'dress-rehearsal', DressRehearsalTemplate> & {
  catalogueVersion: string;
  scenario: Scenario;
  /** The true sky at the run's first instant; it turns from there. */
  frame: SkyFrame;
  nakedEyeLimit: number;
  kit: RunKit;
  /** What is wrong with the telescope itself. */
  telescope: OwnTelescope;
  events: EveningEvents;
  benches: RehearsalBenches;
  /** Stages that stand already as somebody left them. */
  foundDone: readonly BenchStage[];
  /** Stars well off each other to check an alignment on, best first. */
  thirdHips: readonly number[];
  /** Of sky time for the run's full marks; null: time does not count. */
  minutesAllowed: number | null;
};
