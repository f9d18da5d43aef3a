import type { BenchVariant } from './bench-variant';

export const finderTemplates = ['plain'] as const;
export type FinderTemplate = (typeof finderTemplates)[number];

/** One student's "Finder". */
export type FinderVariant = BenchVariant<'finder', FinderTemplate>;
