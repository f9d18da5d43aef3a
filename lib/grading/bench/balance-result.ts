import type { BalanceTemplate } from '../../variants/bench/balance-variant';
import type { BenchResult } from './bench-result';

type BalanceCriterion = 'all';
export type BalanceGate = { id: 'none' };
export type BalanceSlip = { code: 'none' };

export type BalanceResult = BenchResult<
  'balance',
  BalanceTemplate,
  BalanceCriterion,
  BalanceGate,
  BalanceSlip
>;
