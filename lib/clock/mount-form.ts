import { believedInstant, type EnteredTime } from './believed-instant';

/** The rows of the form in which the mount is told time and place. */
export const formEntries = [
  'date',
  'time',
  'zone',
  'summer-time',
  'latitude',
  'longitude',
] as const;
export type FormEntry = (typeof formEntries)[number];

/** The form as it is filled in: whole numbers and sides, as they are typed. */
export type MountForm = {
  year: number;
  month: number;
  day: number;
  /** 0 to 23. */
  hour: number;
  minute: number;
  /** Ahead of UTC without summer time, in minutes: east is positive. */
  zoneMinutes: number;
  summerTime: boolean;
  latitudeDegrees: number;
  latitudeMinutes: number;
  latitudeSide: 'N' | 'S';
  longitudeDegrees: number;
  longitudeMinutes: number;
  longitudeSide: 'E' | 'W';
};
export type FormField = keyof MountForm;

export const fieldsOfEntry: Readonly<Record<FormEntry, readonly FormField[]>> = {
  date: ['year', 'month', 'day'],
  time: ['hour', 'minute'],
  zone: ['zoneMinutes'],
  'summer-time': ['summerTime'],
  latitude: ['latitudeDegrees', 'latitudeMinutes', 'latitudeSide'],
  longitude: ['longitudeDegrees', 'longitudeMinutes', 'longitudeSide'],
};

/** North is positive. */
export const latitudeDegOf = (form: MountForm): number =>
  signed(form.latitudeDegrees, form.latitudeMinutes, form.latitudeSide === 'S');

/** East is positive. */
export const longitudeDegOf = (form: MountForm): number =>
  signed(form.longitudeDegrees, form.longitudeMinutes, form.longitudeSide === 'W');

const signed = (degrees: number, minutes: number, negative: boolean): number =>
  (negative ? -1 : 1) * (degrees + minutes / 60);

/** The form's place fields for a place given in whole arcminutes, north and east positive. */
export function placeFields(
  latitudeArcmin: number,
  longitudeArcmin: number,
): Pick<
  MountForm,
  | 'latitudeDegrees'
  | 'latitudeMinutes'
  | 'latitudeSide'
  | 'longitudeDegrees'
  | 'longitudeMinutes'
  | 'longitudeSide'
> {
  const [latitude, longitude] = [Math.abs(latitudeArcmin), Math.abs(longitudeArcmin)];
  return {
    latitudeDegrees: Math.floor(latitude / 60),
    latitudeMinutes: latitude % 60,
    latitudeSide: latitudeArcmin < 0 ? 'S' : 'N',
    longitudeDegrees: Math.floor(longitude / 60),
    longitudeMinutes: longitude % 60,
    longitudeSide: longitudeArcmin < 0 ? 'W' : 'E',
  };
}

/** What the form says of the time. What summer time adds is the zone's, the form only switches it. */
export function enteredTime(form: MountForm, summerTimeMinutes: number): EnteredTime {
  const two = (value: number): string => String(value).padStart(2, '0');
  return {
    localTime: `${String(form.year)}-${two(form.month)}-${two(form.day)}T${two(form.hour)}:${two(form.minute)}`,
    zoneOffsetMinutes: form.zoneMinutes,
    summerTime: form.summerTime,
    summerTimeMinutes,
  };
}

/**
 * The instant the mount makes of a form, in milliseconds of the Unix epoch; null for a day that no
 * calendar has.
 */
export function formInstantMs(form: MountForm, summerTimeMinutes: number): number | null {
  const believed = believedInstant(enteredTime(form, summerTimeMinutes));
  return believed.ok ? Date.parse(believed.instant) : null;
}

/** A place off by no more than this was read off the card rightly: decimals round either way. */
const samePlaceArcmin = 1.5;

/**
 * The rows in which a form says something else than another. Rows of time that differ but name the
 * same instant differ in nothing that the mount would notice: an hour moved from the summer-time switch
 * into the zone, or a wristwatch's time with the wristwatch's zone.
 */
export function entriesThatDiffer(
  form: MountForm,
  other: MountForm,
  summerTimeMinutes: number,
): FormEntry[] {
  const one = formInstantMs(form, summerTimeMinutes);
  const two = formInstantMs(other, summerTimeMinutes);
  const sameInstant = one !== null && one === two;
  return formEntries.filter((entry) => {
    if (entry === 'latitude') return placesDiffer(latitudeDegOf(form), latitudeDegOf(other));
    if (entry === 'longitude') return placesDiffer(longitudeDegOf(form), longitudeDegOf(other));
    return !sameInstant && fieldsOfEntry[entry].some((field) => form[field] !== other[field]);
  });
}

const placesDiffer = (oneDeg: number, otherDeg: number): boolean =>
  Math.abs(oneDeg - otherDeg) * 60 > samePlaceArcmin;

/** One row of a form taken from another. */
export const withEntry = (form: MountForm, entry: FormEntry, from: MountForm): MountForm => ({
  ...form,
  ...Object.fromEntries(fieldsOfEntry[entry].map((field) => [field, from[field]])),
});

export type FormProblem = 'no-such-date' | 'latitude-beyond-90' | 'longitude-beyond-180';

/** Why no mount would take a form; null when it would. */
export function formProblem(form: MountForm): FormProblem | null {
  if (formInstantMs(form, 60) === null) return 'no-such-date';
  if (Math.abs(latitudeDegOf(form)) > 90) return 'latitude-beyond-90';
  return Math.abs(longitudeDegOf(form)) > 180 ? 'longitude-beyond-180' : null;
}
