import { z } from 'zod';
import type { PairResult } from '../../grading/pair-result';
import { skyObjectIdSchema } from '../../grading/pair-submission';
import { scenarioSchema } from '../../pointing/scenario';
import { pairTemplates, type PairVariant } from '../../variants/pair-variant';
import {
  cautionSchema,
  figuresSchema,
  hip,
  number,
  reasonSchema,
  skyFrameSchema,
} from './stored-sky';

/* The JSON columns of an attempt at "Pick the pair". */

export const pairVariantSchema: z.ZodType<PairVariant> = z.object({
  lab: z.literal('pick-the-pair'),
  generatorVersion: z.int(),
  catalogueVersion: z.string(),
  template: z.enum(pairTemplates),
  scenario: scenarioSchema,
  frame: skyFrameSchema,
  nakedEyeLimit: number,
  givenHip: hip.nullable(),
  proposals: z.array(hip).nullable(),
});

export const pairResultSchema: z.ZodType<PairResult> = z.object({
  lab: z.literal('pick-the-pair'),
  graderVersion: z.int(),
  template: z.enum(pairTemplates),
  total: number,
  criteria: z.array(
    z.object({
      id: z.enum(['first-star', 'second-star', 'geometry', 'none-usable']),
      earned: number,
      possible: number,
    }),
  ),
  stars: z.array(
    z.object({
      hip,
      name: z.string(),
      azimuthDeg: number,
      altitudeDeg: number,
      usable: z.boolean(),
      reasons: z.array(reasonSchema),
      cautions: z.array(cautionSchema),
      lookAlike: skyObjectIdSchema.nullable(),
      cautionNamed: z.boolean(),
    }),
  ),
  chosen: figuresSchema.nullable(),
  best: figuresSchema.nullable(),
  advice: z.discriminatedUnion('code', [
    z.object({ code: z.literal('well-chosen') }),
    z.object({ code: z.literal('said-none-rightly') }),
    z.object({ code: z.literal('said-none-wrongly'), usablePairs: number }),
    z.object({ code: z.literal('there-was-none') }),
    z.object({ code: z.literal('star-unusable'), hip, reason: reasonSchema }),
    z.object({ code: z.literal('look-alike-missed'), hip, caution: cautionSchema }),
    z.object({ code: z.literal('too-close'), separationDeg: number }),
    z.object({ code: z.literal('same-azimuth'), azimuthGapDeg: number }),
    z.object({ code: z.literal('nearly-opposite'), separationDeg: number }),
    z.object({ code: z.literal('better-pair'), hitRate: number, bestHitRate: number }),
  ]),
});
