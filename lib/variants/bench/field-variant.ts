import type { BenchVariant } from './bench-variant';

export const fieldTemplates = ['plain'] as const;
export type FieldTemplate = (typeof fieldTemplates)[number];

/** One student's "Field". */
export type FieldVariant = BenchVariant<'field', FieldTemplate>;
