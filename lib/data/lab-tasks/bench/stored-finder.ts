import { z } from 'zod';
import type { FinderResult } from '../../../grading/bench/finder-result';
import { finderTemplates, type FinderVariant } from '../../../variants/bench/finder-variant';
import { number } from '../stored-sky';

/* The JSON columns of an attempt at "Finder". */

const template = z.enum(finderTemplates);

export const finderVariantSchema: z.ZodType<FinderVariant> = z.object({
  lab: z.literal('finder'),
  template,
  generatorVersion: z.int(),
  kitName: z.string(),
});

export const finderResultSchema: z.ZodType<FinderResult> = z.object({
  lab: z.literal('finder'),
  graderVersion: z.int(),
  template,
  total: number,
  criteria: z.array(z.object({ id: z.literal('all'), earned: number, possible: number })),
  gates: z.array(z.object({ id: z.literal('none') })),
  slips: z.array(z.object({ code: z.literal('none') })),
});
