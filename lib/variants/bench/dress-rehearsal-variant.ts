import type { BenchVariant } from './bench-variant';

export const dressRehearsalTemplates = ['plain'] as const;
export type DressRehearsalTemplate = (typeof dressRehearsalTemplates)[number];

/** One student's "Dress rehearsal". */
export type DressRehearsalVariant = BenchVariant<'dress-rehearsal', DressRehearsalTemplate>;
