import type { PutItTogetherTemplate } from '../../variants/bench/put-it-together-variant';
import type { BenchResult } from './bench-result';

type PutItTogetherCriterion = 'all';
export type PutItTogetherGate = { id: 'none' };
export type PutItTogetherSlip = { code: 'none' };

export type PutItTogetherResult = BenchResult<
  'put-it-together',
  PutItTogetherTemplate,
  PutItTogetherCriterion,
  PutItTogetherGate,
  PutItTogetherSlip
>;
