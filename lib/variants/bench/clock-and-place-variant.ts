import type { BenchVariant } from './bench-variant';

export const clockAndPlaceTemplates = ['plain'] as const;
export type ClockAndPlaceTemplate = (typeof clockAndPlaceTemplates)[number];

/** One student's "Clock and place". */
export type ClockAndPlaceVariant = BenchVariant<'clock-and-place', ClockAndPlaceTemplate>;
