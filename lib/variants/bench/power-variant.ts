import type { BenchVariant } from './bench-variant';

export const powerTemplates = ['plain'] as const;
export type PowerTemplate = (typeof powerTemplates)[number];

/** One student's "Power". */
export type PowerVariant = BenchVariant<'power', PowerTemplate>;
