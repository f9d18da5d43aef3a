import { z } from 'zod';
import type { PowerResult } from '../../../grading/bench/power-result';
import { powerTemplates, type PowerVariant } from '../../../variants/bench/power-variant';
import { number } from '../stored-sky';

/* The JSON columns of an attempt at "Power". */

const template = z.enum(powerTemplates);

export const powerVariantSchema: z.ZodType<PowerVariant> = z.object({
  lab: z.literal('power'),
  template,
  generatorVersion: z.int(),
  kitName: z.string(),
});

export const powerResultSchema: z.ZodType<PowerResult> = z.object({
  lab: z.literal('power'),
  graderVersion: z.int(),
  template,
  total: number,
  criteria: z.array(z.object({ id: z.literal('all'), earned: number, possible: number })),
  gates: z.array(z.object({ id: z.literal('none') })),
  slips: z.array(z.object({ code: z.literal('none') })),
});
