import type { LevelTemplate } from '../../variants/bench/level-variant';
import type { BenchResult } from './bench-result';

type LevelCriterion = 'all';
export type LevelGate = { id: 'none' };
export type LevelSlip = { code: 'none' };

export type LevelResult = BenchResult<'level', LevelTemplate, LevelCriterion, LevelGate, LevelSlip>;
