import { z } from 'zod';
import type { BalanceResult } from '../../../grading/bench/balance-result';
import { balanceTemplates, type BalanceVariant } from '../../../variants/bench/balance-variant';
import { number } from '../stored-sky';

/* The JSON columns of an attempt at "Balance". */

const template = z.enum(balanceTemplates);

export const balanceVariantSchema: z.ZodType<BalanceVariant> = z.object({
  lab: z.literal('balance'),
  template,
  generatorVersion: z.int(),
  kitName: z.string(),
});

export const balanceResultSchema: z.ZodType<BalanceResult> = z.object({
  lab: z.literal('balance'),
  graderVersion: z.int(),
  template,
  total: number,
  criteria: z.array(z.object({ id: z.literal('all'), earned: number, possible: number })),
  gates: z.array(z.object({ id: z.literal('none') })),
  slips: z.array(z.object({ code: z.literal('none') })),
});
