import type { SkyInNumbers } from '../../../clock/believed-place';
import type { HourCircle } from '../../../clock/hour-angle';
import type { FormEntry, MountForm } from '../../../clock/mount-form';
import type { TubeType } from '../../../optics/image-orientation';
import type { BenchVariant } from '../bench-variant';
import type { ClockCard } from './clock-card';

export const clockAndPlaceTemplates = [
  'enter-the-card',
  'check-the-form',
  'dew-on-the-card',
  'night-of-the-change',
  'far-from-home',
  'by-the-needle',
] as const;
export type ClockAndPlaceTemplate = (typeof clockAndPlaceTemplates)[number];

/** A star by which the sky is shown; the misses are reckoned at the judged ones. */
export type SkyStar = HourCircle & { name: string; magnitude: number; judged: boolean };

export const clockVerdicts = ['plain', 'skipped', 'twice'] as const;
/** Whether the clocks showed a time once, jumped over it or showed it twice. */
export type ClockVerdict = (typeof clockVerdicts)[number];

/** A time of the night with the rule by which it may have been read. */
export type TimeReading = {
  year: number;
  month: number;
  day: number;
  hour: number;
  minute: number;
  summerTime: boolean;
};

/** The night on which the clocks are changed. */
export type ChangeNight = {
  verdict: ClockVerdict;
  forward: boolean;
  /** The wall clock just before, and what it is set to. */
  at: TimeReading;
  becomes: TimeReading;
  /** What the time on the card may mean; the two that it can mean when it is no plain one. */
  readings: readonly TimeReading[];
  canMean: readonly number[];
  /** Which of them whoever wrote the card says when asked; null for a plain time. */
  meant: number | null;
};

/** One student's "Clock and place". */
export type ClockAndPlaceVariant = BenchVariant<'clock-and-place', ClockAndPlaceTemplate> & {
  card: ClockCard;
  /** What a careful person enters. */
  right: MountForm;
  /** What summer time adds in the zone, minutes. */
  summerTimeMinutes: number;
  /** Rows that stand in the form already; of a form to check they may be wrong. */
  given: Partial<MountForm>;
  /** Rows that the learner fills in or may put right. */
  open: readonly FormEntry[];
  /** The real sky at the card's instant and place. */
  sky: SkyInNumbers;
  stars: readonly SkyStar[];
  /** Of the eyepiece that stars are centred with. */
  fieldRadiusDeg: number;
  tubeType: TubeType;
  change: ChangeNight | null;
  /** Of the compass, east positive, degrees; null where the tube starts at true north. */
  declinationDeg: number | null;
};
