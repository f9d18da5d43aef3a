import { z } from 'zod';
import type { FieldResult, FieldSlip } from '../../../grading/bench/field/field-result';
import { fieldSubmissionSchema } from '../../../grading/bench/field/field-submission';
import {
  fieldAsks,
  fieldTemplates,
  type FieldVariant,
} from '../../../variants/bench/field/field-variant';
import { number } from '../stored-sky';

/* The JSON columns of an attempt at "Field". */

const template = z.enum(fieldTemplates);
const named = { id: z.string(), name: z.string(), declinationDeg: number };

export const fieldVariantSchema: z.ZodType<FieldVariant> = z.object({
  lab: z.literal('field'),
  template,
  generatorVersion: z.int(),
  kitName: z.string(),
  tubeType: z.enum(['refractor', 'reflector', 'maksutov-cassegrain']),
  orientation: z.enum(['true', 'mirrored', 'turned']),
  telescope: z.object({ focalLengthMm: number, apertureMm: number }),
  eyepieces: z.array(
    z.object({
      id: z.string(),
      focalLengthMm: number,
      apparentFieldDeg: number,
      focusAtMm: number,
    }),
  ),
  target: z.union([
    z.object({ ...named, kind: z.literal('cluster'), sizeArcmin: number }),
    z.object({ ...named, kind: z.literal('double'), separationArcsec: number }),
    z.object({ ...named, kind: z.enum(['moon', 'star']) }),
  ]),
  asks: z.array(z.enum(fieldAsks)),
  unlabelled: z.object({ eyepieceId: z.string(), timedSeconds: number }).nullable(),
  starInView: z.object({ right: number, up: number }),
  starOnSky: z.object({ rightArcmin: number, upArcmin: number }),
  starsSeed: z.string(),
});

const way = z.object({ along: z.enum(['left', 'right']), up: z.enum(['up', 'down']) });
const wayWrong = { said: way, right: way, asInTrueView: z.boolean() };
const slipSchema: z.ZodType<FieldSlip> = z.discriminatedUnion('code', [
  z.object({ code: z.literal('field-too-small'), fieldArcmin: number, neededArcmin: number }),
  z.object({
    code: z.literal('could-be-larger'),
    magnification: number,
    bestMagnification: number,
  }),
  z.object({
    code: z.literal('magnifies-too-little'),
    apparentArcmin: number,
    neededArcmin: number,
  }),
  z.object({
    code: z.literal('magnifies-too-much'),
    magnification: number,
    usefulMagnification: number,
  }),
  z.object({
    code: z.literal('closer-than-the-aperture-splits'),
    separationArcsec: number,
    dawesArcsec: number,
  }),
  z.object({ code: z.literal('it-could-be-done'), bestId: z.string() }),
  z.object({ code: z.literal('wrong-eyepiece-in'), saidSeconds: number, timedSeconds: number }),
  z.object({ code: z.literal('out-of-focus'), discArcmin: number }),
  z.object({
    code: z.literal('field-off'),
    saidArcmin: number,
    fieldArcmin: number,
    slip: z.enum(['half-of-it', 'apparent-field', 'degrees-for-arcminutes']).nullable(),
  }),
  z.object({
    code: z.literal('drift-off'),
    saidSeconds: number,
    driftSeconds: number,
    forgotDeclination: z.boolean(),
  }),
  z.object({ code: z.literal('limit-off'), saidArcsec: number, dawesArcsec: number }),
  z.object({ code: z.literal('way-wrong'), ...wayWrong }),
  z.object({ code: z.literal('view-wrong'), ...wayWrong }),
]);

export const fieldResultSchema: z.ZodType<FieldResult> = z.object({
  lab: z.literal('field'),
  graderVersion: z.int(),
  template,
  total: number,
  criteria: z.array(
    z.object({
      id: z.enum(['eyepiece', 'focus', 'field', 'drift', 'limit', 'way', 'view']),
      earned: number,
      possible: number,
    }),
  ),
  gates: z.array(z.object({ id: z.never() })),
  slips: z.array(slipSchema),
  chosen: fieldSubmissionSchema,
  bestEyepieceId: z.string(),
  fieldArcmin: number,
  driftSeconds: number,
  dawesArcsec: number,
});
