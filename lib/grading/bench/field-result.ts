import type { FieldTemplate } from '../../variants/bench/field-variant';
import type { BenchResult } from './bench-result';

type FieldCriterion = 'all';
export type FieldGate = { id: 'none' };
export type FieldSlip = { code: 'none' };

export type FieldResult = BenchResult<'field', FieldTemplate, FieldCriterion, FieldGate, FieldSlip>;
