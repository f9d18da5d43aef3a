import { z } from 'zod';
import type { ClockAndPlaceResult } from '../../../grading/bench/clock-and-place-result';
import {
  clockAndPlaceTemplates,
  type ClockAndPlaceVariant,
} from '../../../variants/bench/clock-and-place-variant';
import { number } from '../stored-sky';

/* The JSON columns of an attempt at "Clock and place". */

const template = z.enum(clockAndPlaceTemplates);

export const clockAndPlaceVariantSchema: z.ZodType<ClockAndPlaceVariant> = z.object({
  lab: z.literal('clock-and-place'),
  template,
  generatorVersion: z.int(),
  kitName: z.string(),
});

export const clockAndPlaceResultSchema: z.ZodType<ClockAndPlaceResult> = z.object({
  lab: z.literal('clock-and-place'),
  graderVersion: z.int(),
  template,
  total: number,
  criteria: z.array(z.object({ id: z.literal('all'), earned: number, possible: number })),
  gates: z.array(z.object({ id: z.literal('none') })),
  slips: z.array(z.object({ code: z.literal('none') })),
});
