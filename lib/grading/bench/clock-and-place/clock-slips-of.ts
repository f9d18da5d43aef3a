import type { BelievedSky } from '../../../clock/believed-place';
import { believedSkyOf } from '../../../clock/believed-place';
import { withEntry, type FormEntry } from '../../../clock/mount-form';
import type { MissCause } from '../../../clock/split-by-cause';
import { wrap180 } from '../../../units/angle';
import type { ClockAndPlaceVariant } from '../../../variants/bench/clock-and-place/clock-and-place-variant';
import type { ClockAndPlaceSlip } from './clock-and-place-result';
import { curedByAnotherRow, rowsToMend, type ClockWork } from './clock-criteria';
import { formSlips } from './clock-slips';

type Judged = ClockWork & {
  causes: readonly { cause: MissCause; believed: BelievedSky }[];
  /** What a sky alone would make the tube miss by. */
  missOf: (alone: BelievedSky) => number;
};

/** A compass is read to a degree: within it nothing went wrong. */
const readOffDeg = 1;

/** Everything that went wrong, what misses most first. */
export function clockSlipsOf(variant: ClockAndPlaceVariant, work: Judged): ClockAndPlaceSlip[] {
  const { form, missOf, submission } = work;
  if (curedByAnotherRow(variant, work)) {
    const rows = submission.named === null ? [] : [submission.named];
    return [{ code: 'other-row-same-sky', rows, missDeg: 0 }];
  }
  const { right, summerTimeMinutes } = variant;
  const inForm = formSlips(form, variant).map(({ code, rows }) => {
    const alone = believedSkyOf(
      rows.reduce((made, row) => withEntry(made, row, form), right),
      { right, summerTimeMinutes },
    );
    return { code, rows, missDeg: alone === null ? 0 : missOf(alone) };
  });
  return [...saidSlips(variant, work), ...startSlips(variant, work), ...inForm].sort(
    (one, other) => other.missDeg - one.missDeg,
  );
}

function startSlips({ declinationDeg }: ClockAndPlaceVariant, work: Judged): ClockAndPlaceSlip[] {
  const { startDeg, causes, missOf } = work;
  const start = causes.find(({ cause }) => cause === 'start');
  if (declinationDeg === null || start === undefined || Math.abs(startDeg) <= readOffDeg) return [];
  const is = (expectedDeg: number): boolean =>
    Math.abs(wrap180(startDeg - expectedDeg)) <= readOffDeg;
  const code = is(declinationDeg)
    ? 'needle-not-corrected'
    : is(2 * declinationDeg)
      ? 'needle-wrong-way'
      : 'start-off';
  return [{ code, rows: [], missDeg: missOf(start.believed) }];
}

/** What was said of the form or of the time on the card, beside what was entered. */
function saidSlips(variant: ClockAndPlaceVariant, { submission }: Judged): ClockAndPlaceSlip[] {
  const { template, change } = variant;
  const toMend = rowsToMend(variant);
  const slip = (code: ClockAndPlaceSlip['code'], rows: readonly FormEntry[] = []) => ({
    code,
    rows,
    missDeg: 0,
  });
  if (template === 'check-the-form') {
    const missed = toMend.filter((row) => !submission.flagged.includes(row));
    const besides = [...new Set(submission.flagged)].filter((row) => !toMend.includes(row));
    return [
      ...(missed.length === 0 ? [] : [slip('wrong-row-missed', missed)]),
      ...(besides.length === 0 ? [] : [slip('right-row-crossed-out', besides)]),
    ];
  }
  if (template === 'dew-on-the-card') {
    const { named } = submission;
    return named === null || toMend.includes(named) ? [] : [slip('other-row-named', [named])];
  }
  if (change === null) return [];
  if (submission.verdict !== change.verdict) {
    return [slip(change.verdict === 'plain' ? 'asked-for-nothing' : 'guessed')];
  }
  const rightReadings = change.canMean.every((index) => submission.readings.includes(index));
  return change.verdict === 'plain' || rightReadings ? [] : [slip('other-readings')];
}
