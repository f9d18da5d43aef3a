import type { Eyepiece, HorizonPoint, Scenario, Telescope } from '@/lib/pointing/scenario';
import type { LessonSlug } from '@/lib/course/lessons';
import type { AssignmentPolicy } from '@/lib/data/assignment-input';
import { splitLocalTime } from '../local-time-text';
import { partDraft, type PartDraft, type PartSource } from './part-draft';
import { horizonHistory, type HorizonHistory } from '../horizon-editor/horizon-history';

/** A telescope and the eyepieces in its box, as the form offers it. */
export type KitChoice = {
  id: string;
  name: string;
  description: string;
  telescope: Telescope;
  eyepieces: readonly (Eyepiece & { id: string })[];
  observingEyepieceId: string;
};
export type SiteChoice = { id: string; name: string; horizon: readonly HorizonPoint[] };

/**
 * The form as it stands: what was typed, as text, so that an error loses nothing. Only
 * `draftToInput` turns it into numbers.
 */
export type AssignmentDraft = {
  title: string;
  placeName: string;
  latitude: string;
  latitudeSide: 'N' | 'S';
  longitude: string;
  longitudeSide: 'E' | 'W';
  elevationM: string;
  timeZone: string;
  /** YYYY-MM-DD and HH:MM on the wall clock of the place. */
  date: string;
  time: string;
  /** "-05:00" where the hour comes twice and one of the two was chosen. */
  offset: string | null;
  /** null: drawn by hand. */
  siteId: string | null;
  horizon: HorizonHistory;
  clouds: Scenario['clouds'];
  /** null: own numbers. */
  kitId: string | null;
  telescope: Record<Exclude<keyof Telescope, 'computer'>, string> & {
    computer: Telescope['computer'];
  };
  eyepiece: Record<keyof Eyepiece, string>;
  sky: Record<keyof Scenario['sky'], string>;
  settings: Record<keyof Scenario['settings'], string>;
  /** What is marked, in order. */
  parts: readonly PartDraft[];
  /** To be read, in the order of the course. */
  lessons: readonly LessonSlug[];
  /** In a student's mean of all assignments. */
  weight: string;
  needsSignOff: boolean;
  /** '' is no limit. */
  attemptsAllowed: string;
  dueDate: string;
  dueTime: string;
  dueOffset: string | null;
  dueTimeZone: string;
  graceMinutes: string;
  /** In hundredths of the mark. */
  latePercentPerDay: string;
  latePercentCap: string;
  passMark: string;
  feedback: AssignmentPolicy['feedback'];
  counting: AssignmentPolicy['counting'];
};

/** Everything about an assignment that the form shows; `dueLocalTime` is "2026-12-05T19:30" in its zone. */
export type DraftSource = {
  /** false for a class's first assignment: the place's fields start empty. */
  placeIsSet: boolean;
  title: string;
  placeName: string;
  scenario: Scenario;
  kitId: string | null;
  siteId: string | null;
  parts: readonly PartSource[];
  lessons: readonly LessonSlug[];
  weight: number;
  needsSignOff: boolean;
  policy: AssignmentPolicy;
  dueLocalTime: string | null;
  dueTimeZone: string;
};

/** Numbers as a form shows them, in the shape they came in. */
function textOf<K extends string>(
  numbers: Readonly<Record<K, number>>,
  keys: readonly K[],
): Record<K, string> {
  const texts: Partial<Record<K, string>> = {};
  for (const key of keys) texts[key] = String(numbers[key]);
  // Every key of K is listed in `keys`, which the callers' const tuples make sure of.
  return texts as Record<K, string>;
}

export const telescopeNumbers = [
  'focalLengthMm',
  'apertureMm',
  'centringArcmin',
  'altitudeZeroArcmin',
  'coneArcmin',
  'axisSkewArcmin',
] as const;
export const eyepieceNumbers = ['focalLengthMm', 'apparentFieldDeg'] as const;
export const skyNumbers = ['darkestLimitMagnitude', 'extinction'] as const;
export const settingNumbers = [
  'faintestMagnitude',
  'lowestAltitudeDeg',
  'highestAltitudeDeg',
  'horizonMarginDeg',
  'moonDistanceDeg',
] as const;

export const telescopeText = (telescope: Telescope): AssignmentDraft['telescope'] => ({
  ...textOf(telescope, telescopeNumbers),
  computer: telescope.computer,
});
export const eyepieceText = (eyepiece: Eyepiece): AssignmentDraft['eyepiece'] =>
  textOf(eyepiece, eyepieceNumbers);

export function assignmentDraft(source: DraftSource): AssignmentDraft {
  const { scenario, policy } = source;
  const { latitudeDeg, longitudeDeg, elevationM } = scenario.place;
  const due =
    source.dueLocalTime === null
      ? { date: '', time: '', offset: null }
      : splitLocalTime(source.dueLocalTime);
  return {
    title: source.title,
    placeName: source.placeName,
    latitude: source.placeIsSet ? String(Math.abs(latitudeDeg)) : '',
    latitudeSide: latitudeDeg < 0 ? 'S' : 'N',
    longitude: source.placeIsSet ? String(Math.abs(longitudeDeg)) : '',
    longitudeSide: longitudeDeg < 0 ? 'W' : 'E',
    elevationM: source.placeIsSet ? String(elevationM) : '',
    timeZone: scenario.timeZone,
    ...splitLocalTime(scenario.localTime),
    siteId: source.siteId,
    horizon: horizonHistory(scenario.horizon),
    clouds: scenario.clouds,
    kitId: source.kitId,
    telescope: telescopeText(scenario.telescope),
    eyepiece: eyepieceText(scenario.eyepiece),
    sky: textOf(scenario.sky, skyNumbers),
    settings: textOf(scenario.settings, settingNumbers),
    parts: source.parts.map(partDraft),
    lessons: source.lessons,
    weight: String(source.weight),
    needsSignOff: source.needsSignOff,
    attemptsAllowed: policy.attemptsAllowed === null ? '' : String(policy.attemptsAllowed),
    dueDate: due.date,
    dueTime: due.time,
    dueOffset: due.offset,
    dueTimeZone: source.dueTimeZone,
    graceMinutes: String(policy.graceMinutes),
    latePercentPerDay: String(percent(policy.latePenaltyPerDay)),
    latePercentCap: String(percent(policy.latePenaltyCap)),
    passMark: String(policy.passMark),
    feedback: policy.feedback,
    counting: policy.counting,
  };
}

/** Hundredths without the digits that binary fractions add (0.07 · 100 is 7.000000000000001). */
const percent = (share: number): number => Math.round(share * 10_000) / 100;
