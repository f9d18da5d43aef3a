import type { FinderTemplate } from '../../variants/bench/finder-variant';
import type { BenchResult } from './bench-result';

type FinderCriterion = 'all';
export type FinderGate = { id: 'none' };
export type FinderSlip = { code: 'none' };

export type FinderResult = BenchResult<
  'finder',
  FinderTemplate,
  FinderCriterion,
  FinderGate,
  FinderSlip
>;
