import type { MissCause } from '../../../clock/split-by-cause';
import type { FormEntry, MountForm } from '../../../clock/mount-form';
import type {
  ClockAndPlaceTemplate,
  ClockVerdict,
} from '../../../variants/bench/clock-and-place/clock-and-place-variant';
import type { BenchResult } from '../bench-result';

export const clockCriteria = ['entries', 'sky', 'found', 'named', 'asked', 'start'] as const;
export type ClockAndPlaceCriterion = (typeof clockCriteria)[number];

/** Nothing that is entered here can hurt anybody: there is no gate. */
export type ClockAndPlaceGate = { id: never };

export const clockSlipCodes = [
  'summer-hour-forgotten',
  'summer-hour-added',
  'summer-hour-twice',
  'zone-sign',
  'zone-off',
  'twelve-hours',
  'watch-not-converted',
  'watch-wrong-way',
  'time-off',
  'day-and-month',
  'day-off',
  'date-off',
  'latitude-side',
  'longitude-side',
  'place-exchanged',
  'decimals-as-minutes',
  'latitude-off',
  'longitude-off',
  'needle-not-corrected',
  'needle-wrong-way',
  'start-off',
  'wrong-row-missed',
  'right-row-crossed-out',
  'other-row-named',
  'other-row-same-sky',
  'guessed',
  'asked-for-nothing',
  'other-readings',
] as const;

/** What went wrong, with what it alone would make the tube miss by (root mean square), degrees. */
export type ClockAndPlaceSlip = {
  code: (typeof clockSlipCodes)[number];
  /** The rows it stands in; none for what is not a row. */
  rows: readonly FormEntry[];
  missDeg: number;
};

export type ClockAndPlaceResult = BenchResult<
  'clock-and-place',
  ClockAndPlaceTemplate,
  ClockAndPlaceCriterion,
  ClockAndPlaceGate,
  ClockAndPlaceSlip
> & {
  /** As it was handed in. */
  form: MountForm;
  flagged: readonly FormEntry[];
  named: FormEntry | null;
  verdict: ClockVerdict | null;
  readings: readonly number[];
  compassDeg: number | null;
  /** Root mean square over the judged stars. */
  missDeg: number;
  /** About the pole, westward positive. */
  turnDeg: number;
  /** By how much the base would seem to lean to an alignment on two stars. */
  leanDeg: number;
  /** By how much the clock is ahead, minutes. */
  clockAheadMinutes: number;
  /** How far off the Moon stays when an alignment has absorbed the rest. */
  moonDeg: number;
  /** Each judged star's miss, split by cause. */
  stars: readonly {
    name: string;
    missDeg: number;
    shares: readonly { cause: MissCause; deg: number }[];
    togetherDeg: number;
  }[];
};
