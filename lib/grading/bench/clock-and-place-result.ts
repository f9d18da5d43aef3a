import type { ClockAndPlaceTemplate } from '../../variants/bench/clock-and-place-variant';
import type { BenchResult } from './bench-result';

type ClockAndPlaceCriterion = 'all';
export type ClockAndPlaceGate = { id: 'none' };
export type ClockAndPlaceSlip = { code: 'none' };

export type ClockAndPlaceResult = BenchResult<
  'clock-and-place',
  ClockAndPlaceTemplate,
  ClockAndPlaceCriterion,
  ClockAndPlaceGate,
  ClockAndPlaceSlip
>;
