import { fieldOfView, fieldOfViewText } from './assignment-form/field-of-view';
import { labText, templateText } from '@/components/grading/template-text';
import { zonedTimeText } from '@/components/grading/zoned-time';
import { markText } from '@/components/grading/mark-text';
import type { AssignmentDetails } from '@/lib/data/assignments';
import { labOptions } from '@/lib/variants/labs';

const feedbackText: Readonly<Record<AssignmentDetails['policy']['feedback'], string>> = {
  'at-once': 'at once',
  'after-due': 'after the due time',
  'when-released': 'when you release it',
};
const countingText: Readonly<Record<AssignmentDetails['policy']['counting'], string>> = {
  best: 'the best counts',
  last: 'the last counts',
  first: 'the first counts',
  average: 'the average counts',
};

type Row = readonly [string, string];

/** The whole setting of an assignment at a glance. */
export function AssignmentSummary({
  assignment,
  kitName,
  siteName,
}: {
  assignment: AssignmentDetails;
  kitName: string | null;
  siteName: string | null;
}) {
  const { scenario, policy } = assignment;
  const { place, telescope, eyepiece, settings } = scenario;
  const view = fieldOfView({
    telescopeFocalLengthMm: telescope.focalLengthMm,
    apertureMm: telescope.apertureMm,
    eyepieceFocalLengthMm: eyepiece.focalLengthMm,
    apparentFieldDeg: eyepiece.apparentFieldDeg,
  });
  const sky: readonly Row[] = [
    [
      'Place',
      `${assignment.placeName} (${side(place.latitudeDeg, 'N', 'S')}, ${side(place.longitudeDeg, 'E', 'W')}, ${place.elevationM} m)`,
    ],
    [
      'Time there',
      `${scenario.localTime.replace('T', ', ')}, ${scenario.timeZone}, ± ${assignment.windowMinutes} minutes`,
    ],
    [
      'Horizon',
      siteName ??
        (scenario.horizon.length === 0
          ? 'level'
          : `own skyline, ${scenario.horizon.length} points`),
    ],
    [
      'Telescope',
      `${kitName ?? 'own numbers'}: ${telescope.apertureMm} mm, f = ${telescope.focalLengthMm} mm, eyepiece ${eyepiece.focalLengthMm} mm${view === null ? '' : `; ${fieldOfViewText(view)}`}`,
    ],
    [
      'Alignment stars',
      `${settings.lowestAltitudeDeg}° to ${settings.highestAltitudeDeg}° up, magnitude ${settings.faintestMagnitude} or brighter, ${settings.horizonMarginDeg}° clear of the skyline, ${settings.moonDistanceDeg}° from the Moon`,
    ],
  ];
  const { withoutSky = false, ofAllKinds = false } = labOptions[assignment.lab];
  const rows: readonly Row[] = [
    ['Lab', labText[assignment.lab].name],
    ...(withoutSky ? [] : sky),
    [
      ofAllKinds ? 'Lessons' : 'Kinds of task',
      assignment.templates
        .map((template) => templateText(assignment.lab, template).name)
        .join(' · '),
    ],
    ...(assignment.minutesAllowed === null
      ? []
      : [['Time', `counts: ${assignment.minutesAllowed} minutes for full marks`] as const]),
    [
      'Attempts',
      `${policy.attemptsAllowed === null ? 'no limit' : policy.attemptsAllowed}; ${countingText[policy.counting]}; pass mark ${markText(policy.passMark)}`,
    ],
    [
      'Due',
      policy.dueAt === null
        ? 'no due time'
        : `${zonedTimeText(policy.dueAt, assignment.dueTimeZone)} (${assignment.dueTimeZone}), ${policy.graceMinutes} minutes of grace, then ${markText(policy.latePenaltyPerDay * 100)} % off per day, at most ${markText(policy.latePenaltyCap * 100)} %`,
    ],
    ['Mark and feedback', feedbackText[policy.feedback]],
  ];
  return (
    <dl className="grid gap-x-6 gap-y-1 sm:grid-cols-[10rem_1fr]">
      {rows.map(([term, text]) => (
        <div key={term} className="contents">
          <dt className="font-semibold">{term}</dt>
          <dd className="mb-2 sm:mb-0">{text}</dd>
        </div>
      ))}
    </dl>
  );
}

const side = (valueDeg: number, positive: string, negative: string): string =>
  `${Math.abs(valueDeg).toFixed(2)}° ${valueDeg < 0 ? negative : positive}`;
