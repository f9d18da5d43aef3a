import { z } from 'zod';
import type { LevelResult } from '../../../grading/bench/level-result';
import { levelTemplates, type LevelVariant } from '../../../variants/bench/level-variant';
import { number } from '../stored-sky';

/* The JSON columns of an attempt at "Level". */

const template = z.enum(levelTemplates);

export const levelVariantSchema: z.ZodType<LevelVariant> = z.object({
  lab: z.literal('level'),
  template,
  generatorVersion: z.int(),
  kitName: z.string(),
});

export const levelResultSchema: z.ZodType<LevelResult> = z.object({
  lab: z.literal('level'),
  graderVersion: z.int(),
  template,
  total: number,
  criteria: z.array(z.object({ id: z.literal('all'), earned: number, possible: number })),
  gates: z.array(z.object({ id: z.literal('none') })),
  slips: z.array(z.object({ code: z.literal('none') })),
});
