import { z } from 'zod';
import type { Disturbance, RunSetup } from '../../alignment/setup';
import type { RunAdvice, RunResult, RunStarResult } from '../../grading/run-result';
import { skyObjectIdSchema } from '../../grading/pair-submission';
import { scenarioSchema } from '../../pointing/scenario';
import { runTemplates, type RunVariant } from '../../variants/run-variant';
import { outcomeSchema, runKitSchema } from './stored-mount';
import { figuresSchema, hip, number, skyFrameSchema } from './stored-sky';

/* The JSON columns of an attempt at the alignment run. */

const afterConfirm = z.int();
const disturbanceSchema: z.ZodType<Disturbance> = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('base-moves'),
    afterConfirm,
    tiltDeg: number,
    risesTowardsDeg: number,
  }),
  z.object({ kind: z.literal('base-turns'), afterConfirm, azimuthDeg: number }),
  z.object({
    kind: z.literal('axis-slips'),
    afterConfirm,
    azimuthDeg: number,
    altitudeDeg: number,
  }),
  z.object({ kind: z.literal('computer-resets'), afterConfirm }),
]);

const way = z.literal([1, -1]);
const setupSchema: z.ZodType<RunSetup> = z.object({
  base: z.object({ tiltDeg: number, risesTowardsDeg: number }),
  errors: z.object({ altitudeZeroDeg: number, coneDeg: number, axisSkewDeg: number }),
  dot: z.object({ rightArcmin: number, upArcmin: number }),
  backlashArcmin: z.object({ azimuth: number, altitude: number }),
  finalApproach: z.object({ azimuth: way, altitude: way }),
  encoderStepArcsec: number,
  slewDegPerSecond: number,
  declinationDeg: number,
  believed: skyFrameSchema,
  disturbances: z.array(disturbanceSchema),
});

export const runVariantSchema: z.ZodType<RunVariant> = z.object({
  lab: z.literal('alignment-run'),
  generatorVersion: z.int(),
  catalogueVersion: z.string(),
  template: z.enum(runTemplates),
  scenario: scenarioSchema,
  frame: skyFrameSchema,
  nakedEyeLimit: number,
  kit: runKitSchema,
  setup: setupSchema,
  givenHip: hip.nullable(),
  proposals: z.array(hip).nullable(),
  thirdHips: z.array(hip),
  minutesAllowed: number.nullable(),
  mayPause: z.boolean(),
});

const starSchema: z.ZodType<RunStarResult> = z.object({
  hip,
  name: z.string(),
  azimuthDeg: number,
  altitudeDeg: number,
  reallyId: skyObjectIdSchema.nullable(),
  reallyName: z.string().nullable(),
  right: z.boolean(),
  offsetArcmin: number,
  offsetOnSky: z.object({ rightArcmin: number, upArcmin: number }).exactOptional(),
  fieldRadiusArcmin: number,
  backlashArcmin: number,
  finalApproachKept: z.boolean(),
  path: z.array(z.object({ atMs: number, azimuthDeg: number, altitudeDeg: number })),
});

const which = z.literal([1, 2]);
const name = z.string();
const adviceSchema: z.ZodType<RunAdvice> = z.discriminatedUnion('code', [
  z.object({ code: z.literal('well-done') }),
  z.object({ code: z.literal('sun'), distanceDeg: number }),
  z.object({
    code: z.literal('start-position'),
    azimuthErrorDeg: number,
    altitudeErrorDeg: number,
  }),
  z.object({ code: z.literal('start-by-compass'), declinationDeg: number }),
  z.object({ code: z.literal('planet-for-star'), which, planet: z.string(), name }),
  z.object({
    code: z.literal('wrong-star'),
    which,
    reallyName: z.string(),
    name,
    separationDeg: number,
  }),
  z.object({ code: z.literal('empty-field'), which, name, offsetArcmin: number }),
  z.object({ code: z.literal('off-centre'), which, offsetArcmin: number, shareOfRadius: number }),
  z.object({ code: z.literal('final-approach'), which, backlashArcmin: number }),
  z.object({ code: z.literal('pair'), hitRate: number, bestHitRate: number }),
  z.object({ code: z.literal('trusted-a-bad-one'), hitRate: number }),
  z.object({ code: z.literal('doubted-a-good-one'), hitRate: number }),
  z.object({ code: z.literal('slow'), minutes: number, minutesAllowed: number }),
]);

export const runResultSchema: z.ZodType<RunResult> = z.object({
  lab: z.literal('alignment-run'),
  graderVersion: z.int(),
  template: z.enum(runTemplates),
  total: number,
  criteria: z.array(
    z.object({
      id: z.enum([
        'start-position',
        'first-star',
        'first-centring',
        'second-star',
        'second-centring',
        'pair',
        'judgement',
        'time',
      ]),
      earned: number,
      possible: number,
    }),
  ),
  gates: z.array(z.object({ id: z.literal('sun'), atMs: number, distanceDeg: number })),
  start: z.object({ azimuthErrorDeg: number, altitudeErrorDeg: number, declinationDeg: number }),
  stars: z.array(starSchema),
  outcome: outcomeSchema.nullable(),
  pair: z.object({ chosen: figuresSchema.nullable(), best: figuresSchema.nullable() }),
  achievedHitRate: number.nullable(),
  perfectHitRate: number.nullable(),
  achieved: z.array(z.object({ azimuthDeg: number, altitudeDeg: number, errorArcmin: number })),
  third: z
    .object({
      hip,
      name,
      missArcmin: number,
      inField: z.boolean(),
      fieldRadiusArcmin: number,
    })
    .nullable(),
  judgement: z
    .object({ trusted: z.boolean(), deserved: z.enum(['trust', 'doubt', 'either']) })
    .nullable(),
  minutes: number,
  advice: adviceSchema,
});
