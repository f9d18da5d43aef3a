import { z } from 'zod';
import { formEntries, type MountForm } from '../../../clock/mount-form';
import { clockVerdicts } from '../../../variants/bench/clock-and-place/clock-and-place-variant';

const whole = (least: number, most: number) => z.number().int().min(least).max(most);

const fields = {
  year: whole(1900, 2199),
  month: whole(1, 12),
  day: whole(1, 31),
  hour: whole(0, 23),
  minute: whole(0, 59),
  zoneMinutes: whole(-720, 840),
  summerTime: z.boolean(),
  latitudeDegrees: whole(0, 90),
  latitudeMinutes: whole(0, 59),
  latitudeSide: z.enum(['N', 'S']),
  longitudeDegrees: whole(0, 180),
  longitudeMinutes: whole(0, 59),
  longitudeSide: z.enum(['E', 'W']),
};

export const mountFormSchema: z.ZodType<MountForm> = z.strictObject(fields);

const entry = z.enum(formEntries);

/** What stands beside the form, in whichever kind of task it is asked for. */
const beside = {
  /** Rows said to be wrong. */
  flagged: z.array(entry).max(formEntries.length),
  /** The row named by where the first slew landed. */
  named: entry.nullable(),
  verdict: z.enum(clockVerdicts).nullable(),
  /** What the time on the card can mean, as places in the list that was offered. */
  readings: z.array(whole(0, 3)).max(4),
  /** Whether whoever wrote the card was asked. */
  asked: z.boolean(),
  /** The bearing on the compass at which the tube starts. */
  compassDeg: z.number().min(0).lt(360).nullable(),
};

/** What the learner entered and said. Never a score. */
export const clockAndPlaceSubmissionSchema = z.strictObject({ form: mountFormSchema, ...beside });
export type ClockAndPlaceSubmission = z.infer<typeof clockAndPlaceSubmissionSchema>;

export type FormDraft = { [Field in keyof MountForm]: MountForm[Field] | null };

const formDraftSchema: z.ZodType<FormDraft> = z.strictObject({
  year: fields.year.nullable(),
  month: fields.month.nullable(),
  day: fields.day.nullable(),
  hour: fields.hour.nullable(),
  minute: fields.minute.nullable(),
  zoneMinutes: fields.zoneMinutes.nullable(),
  summerTime: fields.summerTime.nullable(),
  latitudeDegrees: fields.latitudeDegrees.nullable(),
  latitudeMinutes: fields.latitudeMinutes.nullable(),
  latitudeSide: fields.latitudeSide.nullable(),
  longitudeDegrees: fields.longitudeDegrees.nullable(),
  longitudeMinutes: fields.longitudeMinutes.nullable(),
  longitudeSide: fields.longitudeSide.nullable(),
});

/** Work in progress, kept so that an interrupted attempt resumes. Null is what was not touched yet. */
export const clockAndPlaceDraftSchema = z.strictObject({ form: formDraftSchema, ...beside });
export type ClockAndPlaceDraft = z.infer<typeof clockAndPlaceDraftSchema>;

export const emptyFormDraft: FormDraft = {
  year: null,
  month: null,
  day: null,
  hour: null,
  minute: null,
  zoneMinutes: null,
  summerTime: null,
  latitudeDegrees: null,
  latitudeMinutes: null,
  latitudeSide: null,
  longitudeDegrees: null,
  longitudeMinutes: null,
  longitudeSide: null,
};

export const emptyClockAndPlaceDraft: ClockAndPlaceDraft = {
  form: emptyFormDraft,
  flagged: [],
  named: null,
  verdict: null,
  readings: [],
  asked: false,
  compassDeg: null,
};
