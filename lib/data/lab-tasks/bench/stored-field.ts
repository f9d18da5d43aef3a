import { z } from 'zod';
import type { FieldResult } from '../../../grading/bench/field-result';
import { fieldTemplates, type FieldVariant } from '../../../variants/bench/field-variant';
import { number } from '../stored-sky';

/* The JSON columns of an attempt at "Field". */

const template = z.enum(fieldTemplates);

export const fieldVariantSchema: z.ZodType<FieldVariant> = z.object({
  lab: z.literal('field'),
  template,
  generatorVersion: z.int(),
  kitName: z.string(),
});

export const fieldResultSchema: z.ZodType<FieldResult> = z.object({
  lab: z.literal('field'),
  graderVersion: z.int(),
  template,
  total: number,
  criteria: z.array(z.object({ id: z.literal('all'), earned: number, possible: number })),
  gates: z.array(z.object({ id: z.literal('none') })),
  slips: z.array(z.object({ code: z.literal('none') })),
});
