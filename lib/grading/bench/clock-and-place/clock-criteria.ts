import { entriesThatDiffer, type FormEntry, type MountForm } from '../../../clock/mount-form';
import { formEntries } from '../../../clock/mount-form';
import type {
  ClockAndPlaceTemplate,
  ClockAndPlaceVariant,
} from '../../../variants/bench/clock-and-place/clock-and-place-variant';
import type { BenchCriterion } from '../bench-result';
import type { ClockAndPlaceCriterion } from './clock-and-place-result';
import type { ClockAndPlaceSubmission } from './clock-and-place-submission';
import { mountFormSchema } from './clock-and-place-submission';

/** Root mean square of the misses: up to a quarter of a degree is a minute of the clock. */
const skyFullDeg = 0.25;
/** More than half a fist: no finder shows the star any more. */
const skyNothingDeg = 6;
/** A compass is read to a degree. */
const startFullDeg = 1;
const startNothingDeg = 5;

const possible: Readonly<
  Record<ClockAndPlaceTemplate, readonly (readonly [ClockAndPlaceCriterion, number])[]>
> = {
  'enter-the-card': [
    ['entries', 60],
    ['sky', 40],
  ],
  'far-from-home': [
    ['entries', 60],
    ['sky', 40],
  ],
  'check-the-form': [
    ['found', 30],
    ['entries', 40],
    ['sky', 30],
  ],
  'dew-on-the-card': [
    ['named', 40],
    ['entries', 30],
    ['sky', 30],
  ],
  'night-of-the-change': [
    ['asked', 40],
    ['entries', 30],
    ['sky', 30],
  ],
  'by-the-needle': [
    ['start', 50],
    ['entries', 20],
    ['sky', 30],
  ],
};

export type ClockWork = {
  form: MountForm;
  /** Rows of it that are wrong as it stands. */
  wrong: readonly FormEntry[];
  startDeg: number;
  missDeg: number;
  submission: ClockAndPlaceSubmission;
};

/** Criterion by criterion; they sum to 100. */
export const clockCriteriaOf = (
  variant: ClockAndPlaceVariant,
  work: ClockWork,
): BenchCriterion<ClockAndPlaceCriterion>[] =>
  possible[variant.template].map(([id, most]) => ({
    id,
    possible: most,
    earned: most * shares[id](variant, work),
  }));

/** How much of a criterion is earned, 0 to 1. */
const shares: Readonly<
  Record<ClockAndPlaceCriterion, (variant: ClockAndPlaceVariant, work: ClockWork) => number>
> = {
  sky: (_, { missDeg }) => band(missDeg, skyFullDeg, skyNothingDeg),

  start: (_, { startDeg }) => band(Math.abs(startDeg), startFullDeg, startNothingDeg),

  entries(variant, work) {
    if (curedByAnotherRow(variant, work)) return 1;
    const { wrong } = work;
    const toMend = rowsToMend(variant);
    // Rows that were right and are wrong now cost as much as those left wrong.
    const spoilt = wrong.filter((row) => !toMend.includes(row)).length;
    const mended = toMend.filter((row) => !wrong.includes(row)).length;
    return Math.max(0, (mended - spoilt) / toMend.length);
  },

  found(variant, { submission }) {
    const toFind = rowsToMend(variant);
    const found = toFind.filter((row) => submission.flagged.includes(row)).length;
    const besides = new Set(submission.flagged).size - found;
    return Math.max(0, (found - besides) / toFind.length);
  },

  named: (variant, work) => (curedByAnotherRow(variant, work) || namedRight(variant, work) ? 1 : 0),

  asked({ change }, { submission: { verdict, readings } }) {
    if (change === null || verdict !== change.verdict) return 0;
    if (verdict === 'plain') return 1;
    const told = [...new Set(readings)].sort();
    return told.join() === [...change.canMean].sort().join() ? 1 : 0.5;
  },
};

const namedRight = (variant: ClockAndPlaceVariant, { submission: { named } }: ClockWork): boolean =>
  named !== null && rowsToMend(variant).includes(named);

/**
 * Where the card is washed out the landing is all there is: another row that puts the sky right, such as
 * a longitude for an hour, could not be told from the real one, and counts as much.
 */
export const curedByAnotherRow = (variant: ClockAndPlaceVariant, work: ClockWork): boolean =>
  variant.template === 'dew-on-the-card' &&
  !namedRight(variant, work) &&
  work.missDeg <= skyFullDeg;

/** The rows that have to be put right: all the open ones of an empty form, the wrong ones of a full one. */
export function rowsToMend({
  given,
  open,
  right,
  summerTimeMinutes,
}: ClockAndPlaceVariant): readonly FormEntry[] {
  const full = mountFormSchema.safeParse(given).data;
  return full === undefined
    ? formEntries.filter((row) => open.includes(row))
    : entriesThatDiffer(full, right, summerTimeMinutes);
}

/** Full within one limit, nothing beyond the other, a straight line between. */
const band = (value: number, full: number, nothing: number): number =>
  Math.max(0, Math.min(1, (nothing - value) / (nothing - full)));
