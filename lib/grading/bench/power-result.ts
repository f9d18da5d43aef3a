import type { PowerTemplate } from '../../variants/bench/power-variant';
import type { BenchResult } from './bench-result';

type PowerCriterion = 'all';
export type PowerGate = { id: 'none' };
export type PowerSlip = { code: 'none' };

export type PowerResult = BenchResult<'power', PowerTemplate, PowerCriterion, PowerGate, PowerSlip>;
