import { z } from 'zod';
import { companions, standingPlaces, type DayHazard } from '../../../finder/day-hazard';
import {
  finderCriteria,
  type FinderResult,
  type FinderSlip,
} from '../../../grading/bench/finder/finder-result';
import {
  dayTargetKinds,
  finderTemplates,
  type FinderVariant,
} from '../../../variants/bench/finder/finder-variant';
import { number } from '../stored-sky';

/* The JSON columns of an attempt at "Finder". */

const template = z.enum(finderTemplates);
const name = z.string();
const azAlt = { azimuthDeg: number, altitudeDeg: number };
const offset = z.object({ rightArcmin: number, upArcmin: number });
const eyepiece = z.object({ focalLengthMm: number, radiusArcmin: number });
const screw = z.object({ alongDeg: number, arcminPerTurn: number });

export const finderVariantSchema: z.ZodType<FinderVariant> = z.object({
  lab: z.literal('finder'),
  template,
  generatorVersion: z.int(),
  kitName: name,
  tubeType: z.enum(['refractor', 'reflector', 'maksutov-cassegrain']),
  orientation: z.enum(['true', 'mirrored', 'turned']),
  eyepieces: z.object({ low: eyepiece, high: eyepiece }),
  finder: z.object({ rightMm: number, upMm: number }),
  adjusters: z.tuple([screw, screw]),
  dotAtFirst: offset,
  lockedAtFirst: z.boolean(),
  tubeAtFirst: z.object(azAlt),
  eyepieceAtFirst: z.enum(['low', 'high']),
  middleAzimuthDeg: number,
  daysLater: z.int(),
  day: z
    .object({
      localTime: z.string(),
      sun: z.object(azAlt),
      targets: z.array(
        z.object({
          id: z.string(),
          kind: z.enum(dayTargetKinds),
          name,
          distanceM: number,
          ...azAlt,
        }),
      ),
    })
    .nullable(),
  dusk: z
    .object({
      localTime: z.string(),
      lights: z.array(
        z.object({
          id: z.string(),
          kind: z.enum(['moon', 'planet', 'star']),
          name,
          magnitude: number,
          radiusArcmin: number,
          ...azAlt,
        }),
      ),
    })
    .nullable(),
  givenTargetId: z.string().nullable(),
  landings: z.record(z.string(), offset),
  setOnBefore: z.object({ distanceM: number, optionsM: z.array(number) }).nullable(),
});

const gateSchema: z.ZodType<DayHazard> = z.discriminatedUnion('id', [
  z.object({
    id: z.literal('near-sun'),
    how: z.enum(['opened-there', 'on-the-way']),
    distanceDeg: number,
  }),
  z.object({ id: z.literal('no-adult'), companion: z.enum(companions).nullable() }),
  z.object({ id: z.literal('not-in-shadow'), stand: z.enum(standingPlaces).nullable() }),
  z.object({ id: z.literal('left-open') }),
]);

const hours = { saidHour: z.int(), reallyHour: z.int() };
const slipSchema: z.ZodType<FinderSlip> = z.discriminatedUnion('code', [
  z.object({
    code: z.literal('near-target'),
    name,
    distanceM: number,
    parallaxArcmin: number,
  }),
  z.object({ code: z.literal('nearer-than-needed'), name, distanceM: number, betterName: name }),
  z.object({ code: z.literal('target-by-the-sun'), name, fromSunDeg: number }),
  z.object({
    code: z.literal('not-centred'),
    name,
    offArcmin: number,
    fieldRadiusArcmin: number,
  }),
  z.object({ code: z.literal('dot-beside-target'), name, gapArcmin: number }),
  z.object({ code: z.literal('tube-moved-to-the-dot'), name, offArcmin: number }),
  z.object({
    code: z.literal('high-power-first'),
    lowRadiusArcmin: number,
    highRadiusArcmin: number,
  }),
  z.object({ code: z.literal('not-checked-in-high-power') }),
  z.object({ code: z.literal('locked-under-the-cap') }),
  z.object({ code: z.literal('day-left-out') }),
  z.object({ code: z.literal('not-refined') }),
  z.object({ code: z.literal('size-misjudged'), saidArcmin: number, reallyArcmin: number }),
  z.object({ code: z.literal('wrong-side'), ...hours }),
  z.object({ code: z.literal('not-as-the-eyepiece-shows'), ...hours }),
  z.object({ code: z.literal('direction-misjudged'), ...hours }),
  z.object({
    code: z.literal('field-misjudged'),
    eyepieceMm: number,
    radiusArcmin: number,
    reallyArcmin: number,
    tookTheWholeField: z.boolean(),
  }),
  z.object({
    code: z.literal('cause-misjudged'),
    saidM: number,
    reallyM: number,
    saidArcmin: number,
    reallyArcmin: number,
  }),
]);

export const finderResultSchema: z.ZodType<FinderResult> = z.object({
  lab: z.literal('finder'),
  graderVersion: z.int(),
  template,
  total: number,
  criteria: z.array(z.object({ id: z.enum(finderCriteria), earned: number, possible: number })),
  gates: z.array(gateSchema),
  slips: z.array(slipSchema),
  target: z.object({ id: z.string(), name, distanceM: number.nullable() }),
  dot: offset,
  shares: z.object({ distance: number, centring: number, dot: number }),
  offCentre: offset.nullable(),
  starInEyepiece: offset.nullable(),
  ways: z.array(
    z.object({
      open: z.boolean(),
      byDay: z.boolean(),
      from: z.object(azAlt),
      to: z.object(azAlt),
    }),
  ),
});
