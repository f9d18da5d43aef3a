import { z } from 'zod';
import type { DressRehearsalResult } from '../../../grading/bench/dress-rehearsal-result';
import {
  dressRehearsalTemplates,
  type DressRehearsalVariant,
} from '../../../variants/bench/dress-rehearsal-variant';
import { number } from '../stored-sky';

/* The JSON columns of an attempt at "Dress rehearsal". */

const template = z.enum(dressRehearsalTemplates);

export const dressRehearsalVariantSchema: z.ZodType<DressRehearsalVariant> = z.object({
  lab: z.literal('dress-rehearsal'),
  template,
  generatorVersion: z.int(),
  kitName: z.string(),
});

export const dressRehearsalResultSchema: z.ZodType<DressRehearsalResult> = z.object({
  lab: z.literal('dress-rehearsal'),
  graderVersion: z.int(),
  template,
  total: number,
  criteria: z.array(z.object({ id: z.literal('all'), earned: number, possible: number })),
  gates: z.array(z.object({ id: z.literal('none') })),
  slips: z.array(z.object({ code: z.literal('none') })),
});
