import type { BenchVariant } from './bench-variant';

export const putItTogetherTemplates = ['plain'] as const;
export type PutItTogetherTemplate = (typeof putItTogetherTemplates)[number];

/** One student's "Put it together". */
export type PutItTogetherVariant = BenchVariant<'put-it-together', PutItTogetherTemplate>;
