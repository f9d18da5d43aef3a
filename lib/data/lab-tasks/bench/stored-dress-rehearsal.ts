import { z } from 'zod';
import {
  dressRehearsalCriteria,
  rehearsedSkills,
  type DressRehearsalGate,
  type DressRehearsalResult,
  type DressRehearsalSlip,
  type RehearsalMiss,
} from '../../../grading/bench/dress-rehearsal/dress-rehearsal-result';
import type { Attribution } from '../../../rehearsal/attribution';
import { causeIds } from '../../../rehearsal/causes';
import type { OwnTelescope } from '../../../rehearsal/evening-setup';
import type { EveningEvents } from '../../../rehearsal/handed-on';
import { packUpSteps, type PackUpStep } from '../../../rehearsal/pack-up';
import { benchStages } from '../../../rehearsal/stages';
import { scenarioSchema } from '../../../pointing/scenario';
import {
  dressRehearsalTemplates,
  type DressRehearsalVariant,
} from '../../../variants/bench/dress-rehearsal/dress-rehearsal-variant';
import { runKitSchema } from '../stored-mount';
import { runResultSchema } from '../stored-run';
import { hip, number, skyFrameSchema } from '../stored-sky';
import { balanceResultSchema, balanceVariantSchema } from './stored-balance';
import { clockAndPlaceResultSchema, clockAndPlaceVariantSchema } from './stored-clock-and-place';
import { finderResultSchema, finderVariantSchema } from './stored-finder';
import { levelResultSchema, levelVariantSchema } from './stored-level';
import { powerResultSchema, powerVariantSchema } from './stored-power';
import { putItTogetherResultSchema, putItTogetherVariantSchema } from './stored-put-it-together';

/* The JSON columns of an attempt at "Dress rehearsal". */

const template = z.enum(dressRehearsalTemplates);
const way = z.literal([1, -1]);

const telescopeSchema: z.ZodType<OwnTelescope> = z.object({
  errors: z.object({ altitudeZeroDeg: number, coneDeg: number, axisSkewDeg: number }),
  backlashArcmin: z.object({ azimuth: number, altitude: number }),
  finalApproach: z.object({ azimuth: way, altitude: way }),
  encoderStepArcsec: number,
  slewDegPerSecond: number,
  declinationDeg: number,
});

const afterConfirm = z.int();
const eventsSchema: z.ZodType<EveningEvents> = z.object({
  kick: z
    .object({ afterConfirm, tiltDeg: number, risesTowardsDeg: number, azimuthDeg: number })
    .nullable(),
  ifNotLocked: z.object({ afterConfirm, azimuthDeg: number, altitudeDeg: number }),
});

export const dressRehearsalVariantSchema: z.ZodType<DressRehearsalVariant> = z.object({
  lab: z.literal('dress-rehearsal'),
  template,
  generatorVersion: z.int(),
  kitName: z.string(),
  catalogueVersion: z.string(),
  scenario: scenarioSchema,
  frame: skyFrameSchema,
  nakedEyeLimit: number,
  kit: runKitSchema,
  telescope: telescopeSchema,
  events: eventsSchema,
  benches: z.object({
    'put-it-together': putItTogetherVariantSchema,
    level: levelVariantSchema,
    balance: balanceVariantSchema,
    finder: finderVariantSchema,
    power: powerVariantSchema,
    'clock-and-place': clockAndPlaceVariantSchema,
  }),
  foundDone: z.array(z.enum(benchStages)),
  thirdHips: z.array(hip),
  minutesAllowed: number.nullable(),
});

const onSky = z.object({ rightArcmin: number, upArcmin: number });
const attributionSchema: z.ZodType<Attribution> = z.union([
  z.object({
    ok: z.literal(true),
    miss: onSky,
    missArcmin: number,
    shares: z.array(
      z.object({ cause: z.enum([...causeIds, 'counts']), moved: onSky, arcmin: number }),
    ),
    togetherArcmin: number,
  }),
  z.object({
    ok: z.literal(false),
    reason: z.literal('refused'),
    outcome: z.enum(['disagree', 'absurd-zero', 'base-on-its-side', 'undetermined']),
    mends: z.array(z.enum(causeIds)),
  }),
  z.object({ ok: z.literal(false), reason: z.literal('forgotten') }),
  z.object({
    ok: z.literal(false),
    reason: z.enum(['not-in-this-sky', 'out-of-reach', 'undetermined']),
  }),
]);

const missSchema: z.ZodType<RehearsalMiss> = z.object({
  kind: z.enum(['first-slew', 'second-slew', 'third', 'first-view']),
  name: z.string(),
  fieldRadiusArcmin: number,
  attribution: attributionSchema,
});

const packUpStep: z.ZodType<PackUpStep> = z.enum([...packUpSteps]);
const lostMarks = number;
const slipSchema: z.ZodType<DressRehearsalSlip> = z.discriminatedUnion('code', [
  z.object({ code: z.literal('not-done'), stage: z.enum(dressRehearsalCriteria), lostMarks }),
  z.object({ code: z.literal('bench'), stage: z.enum(benchStages), first: z.string(), lostMarks }),
  z.object({ code: z.literal('planned-pair'), hitRate: number, bestHitRate: number, lostMarks }),
  z.object({
    code: z.literal('not-ready'),
    reason: z.enum(['dark', 'not-taken', 'resets-at-once']),
    lostMarks,
  }),
  z.object({
    code: z.literal('alignment-run'),
    advice: z.enum([
      'well-done',
      'sun',
      'start-position',
      'start-by-compass',
      'planet-for-star',
      'wrong-star',
      'empty-field',
      'off-centre',
      'final-approach',
      'pair',
      'trusted-a-bad-one',
      'doubted-a-good-one',
      'slow',
    ]),
    lostMarks,
  }),
  z.object({
    code: z.literal('packed-up'),
    broken: z.array(z.object({ before: packUpStep, after: packUpStep, danger: z.boolean() })),
    missing: z.array(packUpStep),
    lostMarks,
  }),
  z.object({
    code: z.literal('does-not-last'),
    hours: number.nullable(),
    resetsAtSlew: number.nullable(),
    lostMarks,
  }),
]);

const gateSchema: z.ZodType<DressRehearsalGate> = z.object({
  id: z.enum([...benchStages, 'alignment-run', 'pack-up']),
  gate: z.string(),
});

export const dressRehearsalResultSchema: z.ZodType<DressRehearsalResult> = z.object({
  lab: z.literal('dress-rehearsal'),
  graderVersion: z.int(),
  template,
  total: number,
  criteria: z.array(
    z.object({ id: z.enum(dressRehearsalCriteria), earned: number, possible: number }),
  ),
  gates: z.array(gateSchema),
  slips: z.array(slipSchema),
  benches: z.object({
    'put-it-together': putItTogetherResultSchema.nullable(),
    level: levelResultSchema.nullable(),
    balance: balanceResultSchema.nullable(),
    finder: finderResultSchema.nullable(),
    power: powerResultSchema.nullable(),
    'clock-and-place': clockAndPlaceResultSchema.nullable(),
  }),
  run: runResultSchema.nullable(),
  misses: z.array(missSchema),
  power: z.object({ hours: number.nullable(), resetsAtSlew: number.nullable() }).nullable(),
  skills: z.array(z.object({ skill: z.enum(rehearsedSkills), shown: z.boolean() })),
  readyForTheField: z.boolean(),
});
