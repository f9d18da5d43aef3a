import { z } from 'zod';
import { formEntries, type MountForm } from '../../../clock/mount-form';
import {
  clockCriteria,
  clockSlipCodes,
  type ClockAndPlaceResult,
} from '../../../grading/bench/clock-and-place/clock-and-place-result';
import { mountFormSchema } from '../../../grading/bench/clock-and-place/clock-and-place-submission';
import {
  dateStyles,
  placeStyles,
  timeStyles,
  zoneStyles,
  type ClockCard,
} from '../../../variants/bench/clock-and-place/clock-card';
import {
  clockAndPlaceTemplates,
  clockVerdicts,
  type ChangeNight,
  type ClockAndPlaceVariant,
} from '../../../variants/bench/clock-and-place/clock-and-place-variant';
import { number } from '../stored-sky';

/* The JSON columns of an attempt at "Clock and place". */

const template = z.enum(clockAndPlaceTemplates);
const row = z.enum(formEntries);
const whole = z.int();
const day = { year: whole, month: whole, day: whole };
const time = { hour: whole, minute: whole };

const cardSchema: z.ZodType<ClockCard> = z.object({
  placeName: z.string(),
  date: z.object({ ...day, style: z.enum(dateStyles) }),
  time: z.object({ ...time, style: z.enum(timeStyles) }),
  watch: z.object({ aheadMinutes: number }).nullable(),
  zone: z.object({ minutes: number, style: z.enum(zoneStyles) }),
  summer: z.discriminatedUnion('style', [
    z.object({ style: z.literal('said'), on: z.boolean() }),
    z.object({ style: z.literal('none') }),
    z.object({ style: z.literal('dates'), forward: z.object(day), back: z.object(day) }),
  ]),
  place: z.object({
    latitudeArcmin: whole,
    longitudeArcmin: whole,
    style: z.enum(placeStyles),
    longitudeFirst: z.boolean(),
  }),
  smudged: z.array(row),
});

const reading = z.object({ ...day, ...time, summerTime: z.boolean() });
const changeSchema: z.ZodType<ChangeNight> = z.object({
  verdict: z.enum(clockVerdicts),
  forward: z.boolean(),
  at: reading,
  becomes: reading,
  readings: z.array(reading),
  canMean: z.array(whole),
  meant: whole.nullable(),
});

const givenSchema: z.ZodType<Partial<MountForm>> = z.object({
  year: whole.optional(),
  month: whole.optional(),
  day: whole.optional(),
  hour: whole.optional(),
  minute: whole.optional(),
  zoneMinutes: whole.optional(),
  summerTime: z.boolean().optional(),
  latitudeDegrees: whole.optional(),
  latitudeMinutes: whole.optional(),
  latitudeSide: z.enum(['N', 'S']).optional(),
  longitudeDegrees: whole.optional(),
  longitudeMinutes: whole.optional(),
  longitudeSide: z.enum(['E', 'W']).optional(),
});

export const clockAndPlaceVariantSchema: z.ZodType<ClockAndPlaceVariant> = z.object({
  lab: z.literal('clock-and-place'),
  template,
  generatorVersion: z.int(),
  kitName: z.string(),
  card: cardSchema,
  right: mountFormSchema,
  summerTimeMinutes: number,
  given: givenSchema,
  open: z.array(row),
  sky: z.object({ latitudeDeg: number, refractionScale: number }),
  stars: z.array(
    z.object({
      name: z.string(),
      magnitude: number,
      judged: z.boolean(),
      hourAngleDeg: number,
      declinationDeg: number,
    }),
  ),
  fieldRadiusDeg: number,
  tubeType: z.enum(['refractor', 'reflector', 'maksutov-cassegrain']),
  change: changeSchema.nullable(),
  declinationDeg: number.nullable(),
});

const cause = z.enum([...formEntries, 'start']);

export const clockAndPlaceResultSchema: z.ZodType<ClockAndPlaceResult> = z.object({
  lab: z.literal('clock-and-place'),
  graderVersion: z.int(),
  template,
  total: number,
  criteria: z.array(z.object({ id: z.enum(clockCriteria), earned: number, possible: number })),
  gates: z.array(z.object({ id: z.never() })),
  slips: z.array(z.object({ code: z.enum(clockSlipCodes), rows: z.array(row), missDeg: number })),
  form: mountFormSchema,
  flagged: z.array(row),
  named: row.nullable(),
  verdict: z.enum(clockVerdicts).nullable(),
  readings: z.array(whole),
  compassDeg: number.nullable(),
  missDeg: number,
  turnDeg: number,
  leanDeg: number,
  clockAheadMinutes: number,
  moonDeg: number,
  stars: z.array(
    z.object({
      name: z.string(),
      missDeg: number,
      shares: z.array(z.object({ cause, deg: number })),
      togetherDeg: number,
    }),
  ),
});
