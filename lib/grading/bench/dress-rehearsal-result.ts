import type { DressRehearsalTemplate } from '../../variants/bench/dress-rehearsal-variant';
import type { BenchResult } from './bench-result';

type DressRehearsalCriterion = 'all';
export type DressRehearsalGate = { id: 'none' };
export type DressRehearsalSlip = { code: 'none' };

export type DressRehearsalResult = BenchResult<
  'dress-rehearsal',
  DressRehearsalTemplate,
  DressRehearsalCriterion,
  DressRehearsalGate,
  DressRehearsalSlip
>;
