import { z } from 'zod';
import type { Evidence, Observation } from '../../faults/evidence';
import { cureIds, faultIds } from '../../faults/fault-ids';
import type { FaultResult } from '../../grading/fault-result';
import { scenarioSchema } from '../../pointing/scenario';
import {
  faultTemplates,
  looks,
  type FaultAnswerKey,
  type FaultVariant,
} from '../../variants/fault-variant';
import { outcomeSchema, runKitSchema } from './stored-mount';
import { hip, number, skyFrameSchema } from './stored-sky';

/* The JSON columns of an attempt at "What went wrong?". */

const fault = z.enum(faultIds);
const cure = z.enum(cureIds);
const look = z.enum(looks);
const landingSchema = z.object({ hip, name: z.string(), rightDeg: number, upDeg: number });

const observationSchema: z.ZodType<Observation> = z.enum([
  'tube-stood-level',
  'tube-not-level',
  'bubble-in-the-ring',
  'bubble-off',
  'set-by-compass',
  'set-by-pole-star',
  'dot-agrees-with-eyepiece',
  'dot-beside-the-star-in-eyepiece',
  'clutches-firm',
  'clutch-loose',
  'tripod-was-touched',
  'tripod-untouched',
  'lamp-dimmed-while-slewing',
  'lamp-steady',
  'last-moves-right-and-up',
  'last-moves-any-way',
  'cable-free',
  'cable-taut',
]);

const evidenceSchema: z.ZodType<Evidence> = z.object({
  first: landingSchema,
  second: landingSchema,
  outcome: outcomeSchema,
  later: z.array(landingSchema),
  card: z.object({
    localTime: z.string(),
    timeZoneOffset: z.string(),
    summerTime: z.boolean(),
    latitudeText: z.string(),
    longitudeText: z.string(),
  }),
  observations: z.array(observationSchema),
});

export const faultVariantSchema: z.ZodType<FaultVariant> = z.object({
  lab: z.literal('what-went-wrong'),
  generatorVersion: z.int(),
  catalogueVersion: z.string(),
  template: z.enum(faultTemplates),
  scenario: scenarioSchema,
  frame: skyFrameSchema,
  nakedEyeLimit: number,
  kit: runKitSchema,
  evidence: evidenceSchema,
  open: z.array(look),
  testSlews: z.array(landingSchema),
  faults: z.array(fault),
  cures: z.array(cure),
});

const tellTale = z.enum([...looks, 'test-slew']);
export const faultAnswerKeySchema: z.ZodType<FaultAnswerKey> = z.object({
  lab: z.literal('what-went-wrong'),
  fault,
  alike: z.array(fault),
  cures: z.partialRecord(fault, z.array(cure)),
  tellTales: z.partialRecord(fault, tellTale),
  testSlewsIf: z.partialRecord(fault, z.array(landingSchema)).exactOptional(),
});

export const faultResultSchema: z.ZodType<FaultResult> = z.object({
  lab: z.literal('what-went-wrong'),
  graderVersion: z.int(),
  template: z.enum(faultTemplates),
  total: number,
  criteria: z.array(
    z.object({ id: z.enum(['fault', 'cure', 'looks']), earned: number, possible: number }),
  ),
  named: fault,
  cure,
  fault,
  alike: z.array(fault),
  rightCures: z.array(cure),
  looked: z.array(look),
  testSlew: hip.nullable(),
  tellTale: tellTale.nullable(),
  namedSlew: landingSchema.nullable().exactOptional(),
});
