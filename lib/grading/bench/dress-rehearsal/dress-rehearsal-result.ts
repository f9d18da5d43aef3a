import type { Attribution } from '../../../rehearsal/attribution';
import type { NotReady } from '../../../rehearsal/handed-on';
import type { PackedUp } from '../../../rehearsal/pack-up';
import type { BenchStage } from '../../../rehearsal/stages';
import type { GoToKind } from '../../../rehearsal/trace-run';
import type { DressRehearsalTemplate } from '../../../variants/bench/dress-rehearsal/dress-rehearsal-variant';
import type { RunResult } from '../../run-result';
import type { BalanceResult } from '../balance/balance-result';
import type { BenchResult } from '../bench-result';
import type { ClockAndPlaceResult } from '../clock-and-place/clock-and-place-result';
import type { FinderResult } from '../finder/finder-result';
import type { LevelResult } from '../level/level-result';
import type { PowerResult } from '../power/power-result';
import type { PutItTogetherResult } from '../put-it-together/put-it-together-result';

export const dressRehearsalCriteria = [
  'put-it-together',
  'level',
  'balance',
  'finder',
  'power',
  'clock-and-place',
  'pick-the-pair',
  'alignment-run',
  'pack-up',
] as const;
export type DressRehearsalCriterion = (typeof dressRehearsalCriteria)[number];

/** A gate that failed at a stage; `gate` is that stage's own name for it. */
export type DressRehearsalGate = { id: BenchStage | 'alignment-run' | 'pack-up'; gate: string };

/** What cost most at each stage, in marks of the whole evening. */
export type DressRehearsalSlip = { lostMarks: number } & (
  | {
      code: 'not-done';
      stage: DressRehearsalCriterion;
    }
  /** `first` is that lab's own code for what went wrong most. */
  | { code: 'bench'; stage: BenchStage; first: string }
  | { code: 'planned-pair'; hitRate: number; bestHitRate: number }
  /** The alignment run was not possible: what stood in its way. */
  | { code: 'not-ready'; reason: NotReady }
  | { code: 'alignment-run'; advice: RunResult['advice']['code'] }
  | { code: 'packed-up'; broken: PackedUp['broken']; missing: PackedUp['missing'] }
  | { code: 'does-not-last'; hours: number | null; resetsAtSlew: number | null }
);

/** A star that was looked for in an eyepiece: how far beside the middle it stood, and why. */
export type RehearsalMiss = {
  kind: GoToKind | 'first-view';
  name: string;
  /** Of the eyepiece that it is looked for in. */
  fieldRadiusArcmin: number;
  attribution: Attribution;
};

/** What each bench's own lab says of the work; null where it was not finished. */
export type BenchResults = {
  'put-it-together': PutItTogetherResult | null;
  level: LevelResult | null;
  balance: BalanceResult | null;
  finder: FinderResult | null;
  power: PowerResult | null;
  'clock-and-place': ClockAndPlaceResult | null;
};

/** Rows of the progress view that an evening gives evidence for. Design, "Skills". */
export const rehearsedSkills = [
  'kit',
  'assemble',
  'level',
  'balance',
  'finder',
  'power',
  'clock-and-place',
  'choose-stars',
  'align',
  'diagnose',
  'safety',
] as const;
export type RehearsedSkill = (typeof rehearsedSkills)[number];

export type DressRehearsalResult = BenchResult<
  'dress-rehearsal',
  DressRehearsalTemplate,
  DressRehearsalCriterion,
  DressRehearsalGate,
  DressRehearsalSlip
> & {
  benches: BenchResults;
  /** Null where no alignment was judged. */
  run: RunResult | null;
  misses: readonly RehearsalMiss[];
  /** Null: the computer was dark. `hours` null: nobody knows. */
  power: { hours: number | null; resetsAtSlew: number | null } | null;
  skills: readonly { skill: RehearsedSkill; shown: boolean }[];
  /** No gate failed, and enough of everything was done. */
  readyForTheField: boolean;
};
