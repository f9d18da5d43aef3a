import { z } from 'zod';
import type { PairFigures } from '../../grading/pair-result';
import { skyObjectIdSchema } from '../../grading/pair-submission';
import type { AnswerKey, Caution, UnusableReason } from '../../pointing/answer-key';
import { nakedEyePlanets, type SkyFrame } from '../../sky/sky-frame';

/*
 * Parts of an attempt's JSON columns that several labs share. The columns were written by this
 * product, but perhaps by an older one: reading them is a border like any other.
 */

export const number = z.number();
export const hip = z.int().positive();
const hipPair = z.tuple([hip, hip]);

const bodyPlaceSchema = z.object({
  azimuthDeg: number,
  altitudeDeg: number,
  trueAltitudeDeg: number,
  magnitude: number,
});

export const skyFrameSchema: z.ZodType<SkyFrame> = z.object({
  instant: z.string(),
  yearsFromJ2000: number,
  icrsToLocal: z.array(number).length(9),
  earthVelocityOverC: z.tuple([number, number, number]),
  refractionScale: number,
  sun: bodyPlaceSchema,
  moon: bodyPlaceSchema.extend({ illuminatedFraction: number }),
  planets: z.array(bodyPlaceSchema.extend({ body: z.enum(nakedEyePlanets) })),
});

export const reasonSchema: z.ZodType<UnusableReason> = z.discriminatedUnion('code', [
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

export const cautionSchema: z.ZodType<Caution> = z.object({
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
export const figuresSchema: z.ZodType<PairFigures> = z.object({
  ...pairShape,
  names: z.tuple([z.string(), z.string()]),
  positions: z.tuple([placeSchema, placeSchema]),
});
