import { z } from 'zod';
import type { PairResult } from '../grading/pair-result';
import { skyObjectIdSchema } from '../grading/pair-submission';
import type { AnswerKey, Caution, UnusableReason } from '../pointing/answer-key';
import { scenarioSchema } from '../pointing/scenario';
import { nakedEyePlanets, type SkyFrame } from '../sky/sky-frame';
import { pairTemplates, type PairVariant } from '../variants/pair-variant';

/*
 * The JSON columns of an attempt. They were written by this product, but perhaps by an older one:
 * reading them is a border like any other.
 */

const number = z.number();
const hip = z.int().positive();
const hipPair = z.tuple([hip, hip]);

const bodyPlaceSchema = z.object({
  azimuthDeg: number,
  altitudeDeg: number,
  trueAltitudeDeg: number,
  magnitude: number,
});

const skyFrameSchema: z.ZodType<SkyFrame> = z.object({
  instant: z.string(),
  yearsFromJ2000: number,
  icrsToLocal: z.array(number).length(9),
  earthVelocityOverC: z.tuple([number, number, number]),
  refractionScale: number,
  sun: bodyPlaceSchema,
  moon: bodyPlaceSchema.extend({ illuminatedFraction: number }),
  planets: z.array(bodyPlaceSchema.extend({ body: z.enum(nakedEyePlanets) })),
});

export const storedVariantSchema: z.ZodType<PairVariant> = z.object({
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

const reasonSchema: z.ZodType<UnusableReason> = z.discriminatedUnion('code', [
  z.object({ code: z.literal('no-name') }),
  z.object({ code: z.literal('too-faint'), magnitude: number, faintestMagnitude: number }),
  z.object({ code: z.literal('variable') }),
  z.object({ code: z.literal('too-low'), altitudeDeg: number, lowestAltitudeDeg: number }),
  z.object({ code: z.literal('too-high'), altitudeDeg: number, highestAltitudeDeg: number }),
  z.object({
    code: z.literal('behind-horizon'),
    altitudeDeg: number,
    horizonAltitudeDeg: number,
    marginDeg: number,
  }),
  z.object({ code: z.literal('sky-too-bright'), seenAsMagnitude: number, nakedEyeLimit: number }),
  z.object({ code: z.literal('near-moon'), distanceDeg: number, moonDistanceDeg: number }),
  z.object({ code: z.literal('behind-cloud') }),
]);

const cautionSchema: z.ZodType<Caution> = z.object({
  neighbour: skyObjectIdSchema,
  neighbourName: z.string(),
  separationDeg: number,
  fainterByMagnitudes: number,
});

const pairShape = {
  stars: hipPair,
  separationDeg: number,
  expectedErrorArcmin: number.nullable(),
  hitRate: number,
};

export const storedAnswerKeySchema: z.ZodType<AnswerKey> = z.object({
  instant: z.string(),
  nakedEyeLimit: number,
  stars: z.array(
    z.object({
      hip,
      name: z.string(),
      azimuthDeg: number,
      altitudeDeg: number,
      magnitude: number,
      usable: z.boolean(),
      reasons: z.array(reasonSchema),
      cautions: z.array(cautionSchema),
    }),
  ),
  pairs: z.array(z.object({ ...pairShape, mark: number })),
});

const placeSchema = z.object({ azimuthDeg: number, altitudeDeg: number });
const figuresSchema = z.object({
  ...pairShape,
  names: z.tuple([z.string(), z.string()]),
  positions: z.tuple([placeSchema, placeSchema]),
});

export const storedResultSchema: z.ZodType<PairResult> = z.object({
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
