import type { BenchVariant } from './bench-variant';

export const levelTemplates = ['plain'] as const;
export type LevelTemplate = (typeof levelTemplates)[number];

/** One student's "Level". */
export type LevelVariant = BenchVariant<'level', LevelTemplate>;
