import type { CellKind } from '../../../power/cell';
import type { BayEnd } from '../../../power/holder';
import type { PowerPlan } from '../../../power/night';
import type { SupplyVerdict } from '../../../power/supply';
import type { ComputerState } from '../../../power/terminals';
import type { PowerTemplate } from '../../../variants/bench/power/power-variant';
import type { BenchResult } from '../bench-result';

export const powerCriteria = [
  'cells',
  'way-round',
  'repaired',
  'supply',
  'verdicts',
  'count',
  'found',
  'readings',
  'order',
  'running',
  'mean-current',
  'run-time',
  'slewing-volts',
  'resets',
  'plan',
] as const;
export type PowerCriterion = (typeof powerCriteria)[number];

/** What no mark can make up for. */
export const powerGates = [
  'mains-outdoors',
  'reverse-polarity',
  'over-voltage',
  'hand-control-live',
] as const;
export type PowerGate = { id: (typeof powerGates)[number] };

/** What was left out or mixed up, where a wrong figure gives it away. */
export const meanCurrentMistakes = [
  'tracking-only',
  'slewing-only',
  'plain-mean',
  'added',
] as const;
export type MeanCurrentMistake = (typeof meanCurrentMistakes)[number];
export const runTimeMistakes = [
  'capacities-added',
  'cold-forgotten',
  'tracking-only',
  'slewing-all-night',
] as const;
export type RunTimeMistake = (typeof runTimeMistakes)[number];
export const slewingVoltsMistakes = ['no-load', 'one-cell', 'tracking-current'] as const;
export type SlewingVoltsMistake = (typeof slewingVoltsMistakes)[number];

export type PowerSlip =
  | { code: 'mains-outdoors'; supply: string }
  | { code: 'reverse-polarity' | 'over-voltage'; volts: number }
  | {
      code:
        | 'hand-control-live'
        | 'hand-control-pulled-live'
        | 'hand-control-with-switch-on'
        | 'supply-with-switch-on'
        | 'supply-before-hand-control'
        | 'switch-not-last'
        | 'cells-moved-while-plugged';
    }
  /** Bays are numbered from 0. */
  | { code: 'cells-reversed'; bays: readonly number[]; openV: number }
  | { code: 'kinds-mixed'; kinds: readonly CellKind[] }
  | { code: 'used-among-fresh'; cells: readonly string[] }
  | { code: 'bays-empty'; bays: readonly number[] }
  | { code: 'wrong-supply'; supply: string; why: SupplyVerdict }
  | { code: 'verdict-wrong'; supply: string; said: SupplyVerdict; right: SupplyVerdict }
  | { code: 'slew-resets'; volts: number; resetBelowV: number }
  | { code: 'not-running'; computer: ComputerState }
  | { code: 'count-wrong'; said: number; right: number; openV: number }
  | { code: 'many-readings'; taken: number; enough: number }
  | { code: 'mean-current-off'; said: number; right: number; mistake: MeanCurrentMistake | null }
  | { code: 'run-time-off'; said: number; right: number; mistake: RunTimeMistake | null }
  | { code: 'slewing-volts-off'; said: number; right: number; mistake: SlewingVoltsMistake | null }
  | { code: 'reset-misjudged'; resets: boolean; volts: number; resetBelowV: number }
  | { code: 'plan-wrong'; said: PowerPlan; right: PowerPlan };

/** The bench as it was handed in, for the picture. */
export type PowerEnd = {
  bays: readonly ({ cell: string; plusEnd: BayEnd } | null)[];
  plugged: string | null;
  handControl: boolean;
  on: boolean;
  volts: number | null;
  computer: ComputerState;
  slewingV: number | null;
};

export type PowerResult = BenchResult<
  'power',
  PowerTemplate,
  PowerCriterion,
  PowerGate,
  PowerSlip
> & {
  end: PowerEnd;
  /** What was foretold; null where nothing was to be. */
  foretold: { runTimeHours: number; slewingVolts: number } | null;
};
