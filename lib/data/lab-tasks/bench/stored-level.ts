import { z } from 'zod';
import type { LevelResult, LevelSlip } from '../../../grading/bench/level/level-result';
import type { LegIndex, TripodSite } from '../../../levelling/tripod';
import {
  levelTemplates,
  type LevelVariant,
  type TiltQuestion,
} from '../../../variants/bench/level/level-variant';
import { number } from '../stored-sky';

/* The JSON columns of an attempt at "Level". */

const template = z.enum(levelTemplates);
const leg: z.ZodType<LegIndex> = z.union([z.literal(0), z.literal(1), z.literal(2)]);
const way = z.enum(['out', 'in']);

const legSiteSchema = z.object({
  azimuthDeg: number,
  groundMm: number,
  sinksMm: number,
  startMm: number,
});
const siteSchema: z.ZodType<TripodSite> = z.object({
  footCircleRadiusMm: number,
  splayDeg: number,
  legMinMm: number,
  legMaxMm: number,
  legs: z.tuple([legSiteSchema, legSiteSchema, legSiteSchema]),
  vial: z.object({ markAzimuthDeg: number, zeroRightMm: number, zeroUpMm: number }),
  armTurns: z.boolean(),
});

const skyPlace = z.object({ azimuthDeg: number, altitudeDeg: number });
const questionSchema: z.ZodType<TiltQuestion> = z.object({
  tiltDeg: number,
  risesTowardsDeg: number,
  first: skyPlace,
  second: skyPlace,
  firstSlewUpArcmin: z.array(number),
  afterTwoStarsArcmin: z.array(number),
  takenAsLevelUpArcmin: z.array(number),
});

export const levelVariantSchema: z.ZodType<LevelVariant> = z.object({
  lab: z.literal('level'),
  template,
  generatorVersion: z.int(),
  kitName: z.string(),
  tubeType: z.enum(['refractor', 'reflector', 'maksutov-cassegrain']),
  site: siteSchema,
  question: questionSchema,
});

const chosenArcmin = number;
const slipSchema: z.ZodType<LevelSlip> = z.discriminatedUnion('code', [
  z.object({
    code: z.literal('left-tilted'),
    tiltDeg: number,
    risesTowardsDeg: number,
    leg,
    byMm: number,
  }),
  z.object({
    code: z.literal('sank-under-tube'),
    leg,
    sunkMm: number,
    leansDeg: number,
    mended: z.boolean(),
  }),
  z.object({
    code: z.literal('trusted-untrue-vial'),
    tiltDeg: number,
    armWasTurned: z.boolean(),
  }),
  z.object({ code: z.literal('wrong-way'), leg, way, beforeDeg: number, afterDeg: number }),
  z.object({ code: z.literal('head-not-turned'), leg, bestLeg: leg, markAzimuthDeg: number }),
  z.object({
    code: z.literal('other-leg-first'),
    leg,
    bestLeg: leg,
    bestWay: way,
    leavesDeg: number,
    couldLeaveDeg: number,
  }),
  z.object({ code: z.literal('more-moves'), moves: z.int(), fewest: z.int() }),
  z.object({ code: z.literal('first-slew'), chosenArcmin, rightArcmin: number }),
  z.object({ code: z.literal('after-two-stars'), chosenArcmin }),
  z.object({ code: z.literal('taken-as-level'), chosenArcmin, rightArcmin: number }),
]);

const tilt = z.object({ tiltDeg: number, risesTowardsDeg: number });

export const levelResultSchema: z.ZodType<LevelResult> = z.object({
  lab: z.literal('level'),
  graderVersion: z.int(),
  template,
  total: number,
  criteria: z.array(
    z.object({
      id: z.enum(['tilt', 'first-leg', 'moves', 'how-level']),
      earned: number,
      possible: number,
    }),
  ),
  gates: z.array(z.object({ id: z.literal('leg-left-open'), leg })),
  slips: z.array(slipSchema),
  found: tilt,
  left: tilt,
  legsMm: z.tuple([number, number, number]),
  armTurned: z.boolean(),
  moves: z.int(),
  fewest: z.int(),
  leftCosts: z.object({
    firstSlewsArcmin: number,
    afterTwoStarsArcmin: number.nullable(),
    takenAsLevelArcmin: number,
  }),
});
