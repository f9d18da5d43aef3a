import { z } from 'zod';
import type { BalanceResult } from '../../../grading/bench/balance/balance-result';
import {
  balanceTemplates,
  type BalanceVariant,
} from '../../../variants/bench/balance/balance-variant';
import { number } from '../stored-sky';

/* The JSON columns of an attempt at "Balance". */

const template = z.enum(balanceTemplates);
const moves = z.enum(['front', 'back', 'holds']);
const placedMass = { massKg: number, alongMm: number, aboveAxisMm: number };

export const balanceVariantSchema: z.ZodType<BalanceVariant> = z.object({
  lab: z.literal('balance'),
  template,
  generatorVersion: z.int(),
  kitName: z.string(),
  tubeType: z.enum(['refractor', 'reflector', 'maksutov-cassegrain']),
  frontMm: number,
  tubeLengthMm: number,
  tubeDiameterMm: number,
  tube: z.object(placedMass),
  parts: z.array(
    z.object({ ...placedMass, id: z.string(), name: z.string(), slot: z.string().nullable() }),
  ),
  needed: z.array(z.string()),
  weightsTold: z.boolean(),
  asksReading: z.boolean(),
  asksForesight: z.boolean(),
  bar: z.object({ leastMm: number, mostMm: number }),
  holdingTorqueNm: number,
  range: z.object({ lowDeg: number, highDeg: number }),
  start: z.object({ clampMm: number, on: z.array(z.string()), handOn: z.boolean() }),
});

const slip = z.discriminatedUnion('code', [
  z.object({
    code: z.literal('creeps'),
    end: z.enum(['front', 'back']),
    atDeg: number,
    torqueNm: number,
    slideMm: number,
    because: z.enum(['off-balance', 'bar-too-short', 'balanced-level-only']),
  }),
  z.object({ code: z.literal('little-reserve'), sparePercent: number, slideMm: number }),
  z.object({ code: z.literal('part-missing'), names: z.array(z.string()) }),
  z.object({ code: z.literal('foreseen-wrong'), said: moves, was: moves }),
  z.object({
    code: z.literal('reading-off'),
    saidMm: number,
    wasMm: number,
    mistake: z.enum(['one-edge', 'wrong-way', 'mass-left-out', 'none']),
    edgeMm: number,
  }),
  z.object({ code: z.literal('not-tested'), low: z.boolean(), high: z.boolean() }),
  z.object({ code: z.literal('swung'), times: z.int(), worstFromDeg: number, worstToDeg: number }),
  z.object({ code: z.literal('opened-raised'), times: z.int(), highestDeg: number }),
]);

export const balanceResultSchema: z.ZodType<BalanceResult> = z.object({
  lab: z.literal('balance'),
  graderVersion: z.int(),
  template,
  total: number,
  criteria: z.array(
    z.object({
      id: z.enum(['foreseen', 'reading', 'holds', 'reserve', 'tested', 'handling']),
      earned: number,
      possible: number,
    }),
  ),
  gates: z.array(
    z.object({
      id: z.enum(['opened-unsupported', 'let-go-loose']),
      times: z.int(),
      outcome: z.enum(['fell', 'caught-by-stop-screw', 'clamp-alone-held']),
    }),
  ),
  slips: z.array(slip),
  picture: z.object({
    left: z.object({ massKg: number, forwardMm: number, aboveMm: number }),
    leftClampMm: number,
    bestClampMm: number.nullable(),
    worstDeg: number,
    worstNm: number,
  }),
});
