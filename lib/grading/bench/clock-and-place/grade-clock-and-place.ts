import { believedSkyOf, leanDeg, missDeg, type BelievedSky } from '../../../clock/believed-place';
import {
  entriesThatDiffer,
  formInstantMs,
  formProblem,
  type FormProblem,
  type MountForm,
} from '../../../clock/mount-form';
import { startErrorDeg } from '../../../clock/needle';
import { causesOf, moonRunsDeg, rootMeanSquare, splitMiss } from '../../../clock/split-by-cause';
import type { ClockAndPlaceVariant } from '../../../variants/bench/clock-and-place/clock-and-place-variant';
import type { BenchGrading, BenchRefusal } from '../bench-result';
import type { ClockAndPlaceResult } from './clock-and-place-result';
import type { ClockAndPlaceSubmission } from './clock-and-place-submission';
import { formAsItStands, fullForm } from './clock-and-place-work';
import { clockCriteriaOf } from './clock-criteria';
import { clockSlipsOf } from './clock-slips-of';
import { totalOf } from '../../total-of';

/** Goes up whenever the same submission could earn other marks. */
export const clockAndPlaceGraderVersion = 1;

const problems: Readonly<Record<FormProblem, string>> = {
  'no-such-date': 'The date on the form is not in the calendar.',
  'latitude-beyond-90': 'No place has a latitude of more than 90°.',
  'longitude-beyond-180': 'No place has a longitude of more than 180°.',
};

/**
 * Marks one form from the stored variant alone: the sky is turned by the numbers in it, never asked of an
 * ephemeris again, so that a regrade is a replay.
 */
export function gradeClockAndPlace({
  variant,
  submission,
}: {
  variant: ClockAndPlaceVariant;
  submission: ClockAndPlaceSubmission;
}): BenchGrading<ClockAndPlaceResult> {
  const form = fullForm(formAsItStands(variant, submission));
  const refusal = refusalOf(variant, submission, form);
  if (refusal !== null || form === null) {
    return { ok: false, refusal: refusal ?? { code: 'incomplete', message: incomplete } };
  }
  const { right, summerTimeMinutes, sky, declinationDeg } = variant;
  const { compassDeg } = submission;
  const startDeg =
    compassDeg === null || declinationDeg === null ? 0 : startErrorDeg(compassDeg, declinationDeg);
  const truth = { right, summerTimeMinutes, startDeg };
  const believed = believedSkyOf(form, truth);
  if (believed === null) throw new Error('a form without a problem has an instant');
  const causes = causesOf(form, truth);
  const stars = variant.stars
    .filter(({ judged }) => judged)
    .map((star) => ({ name: star.name, ...splitMiss(star, believed, causes, sky) }));
  const miss = rootMeanSquare(stars.map((star) => star.missDeg));
  const missOf = (alone: BelievedSky): number =>
    rootMeanSquare(
      variant.stars.filter(({ judged }) => judged).map((star) => missDeg(star, alone, sky)),
    );
  const wrong = entriesThatDiffer(form, right, summerTimeMinutes);
  const work = { form, wrong, startDeg, missDeg: miss, submission };
  const criteria = clockCriteriaOf(variant, work);
  const clockMs = instant(form, summerTimeMinutes) - instant(right, summerTimeMinutes);
  return {
    ok: true,
    result: {
      lab: 'clock-and-place',
      graderVersion: clockAndPlaceGraderVersion,
      template: variant.template,
      total: totalOf(criteria),
      criteria,
      gates: [],
      slips: clockSlipsOf(variant, { ...work, causes, missOf }),
      form,
      compassDeg,
      stars,
      flagged: submission.flagged,
      named: submission.named,
      verdict: submission.verdict,
      readings: submission.readings,
      missDeg: miss,
      turnDeg: believed.turnDeg,
      leanDeg: leanDeg(believed, sky),
      clockAheadMinutes: clockMs / 60_000,
      moonDeg: moonRunsDeg(Math.abs(clockMs)),
    },
  };
}

function instant(form: MountForm, summerTimeMinutes: number): number {
  const ms = formInstantMs(form, summerTimeMinutes);
  if (ms === null) throw new Error('a form without a problem has an instant');
  return ms;
}

const incomplete = 'Something of the task has not been answered yet.';

/** Why it cannot be anybody's answer; null when it can. */
function refusalOf(
  { template, change }: ClockAndPlaceVariant,
  { named, verdict, readings, asked, compassDeg }: ClockAndPlaceSubmission,
  form: MountForm | null,
): BenchRefusal | null {
  const answered =
    (template !== 'dew-on-the-card' || named !== null) &&
    (template !== 'by-the-needle' || compassDeg !== null) &&
    (change === null ||
      verdict === 'plain' ||
      (verdict !== null && asked && readings.length === 2));
  if (!answered || form === null) return { code: 'incomplete', message: incomplete };
  const problem = formProblem(form);
  return problem === null ? null : { code: problem, message: problems[problem] };
}
