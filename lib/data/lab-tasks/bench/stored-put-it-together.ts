import { z } from 'zod';
import type { PutItTogetherResult } from '../../../grading/bench/put-it-together-result';
import {
  putItTogetherTemplates,
  type PutItTogetherVariant,
} from '../../../variants/bench/put-it-together-variant';
import { number } from '../stored-sky';

/* The JSON columns of an attempt at "Put it together". */

const template = z.enum(putItTogetherTemplates);

export const putItTogetherVariantSchema: z.ZodType<PutItTogetherVariant> = z.object({
  lab: z.literal('put-it-together'),
  template,
  generatorVersion: z.int(),
  kitName: z.string(),
});

export const putItTogetherResultSchema: z.ZodType<PutItTogetherResult> = z.object({
  lab: z.literal('put-it-together'),
  graderVersion: z.int(),
  template,
  total: number,
  criteria: z.array(z.object({ id: z.literal('all'), earned: number, possible: number })),
  gates: z.array(z.object({ id: z.literal('none') })),
  slips: z.array(z.object({ code: z.literal('none') })),
});
