import { lessonName } from '@/lib/wording/lesson-name';
import { fieldOfView, fieldOfViewText } from './assignment-form/field-of-view';
import { labText, templateText } from '@/components/grading/template-text';
import { zonedTimeText } from '@/components/grading/zoned-time';
import { markText } from '@/components/grading/mark-text';
import type { AssignmentDetails } from '@/lib/data/assignments';
import { hasMoment, labOptions } from '@/lib/variants/labs';

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
    ['Time there', `${scenario.localTime.replace('T', ', ')}, ${scenario.timeZone}`],
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
  const { parts, lessons } = assignment;
  const withoutSky = parts.every(({ lab }) => labOptions[lab].withoutSky === true);
  const rows: readonly Row[] = [
    ...parts.map((part, index) => partRow(part, index, parts.length)),
    ...(lessons.length === 0 ? [] : [['To read', lessons.map(lessonName).join(' · ')] as const]),
    ...(withoutSky ? [] : sky),
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
    [
      'In the mean',
      `${assignment.weight === 0 ? 'does not count' : `weight ${markText(assignment.weight)}`}${assignment.needsSignOff ? '; complete only when its skills are signed off at the telescope' : ''}`,
    ],
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

/** A part with its kinds of task, and what it counts where there are others. */
function partRow(
  { lab, templates, windowMinutes, minutesAllowed, weight }: AssignmentDetails['parts'][number],
  index: number,
  count: number,
): Row {
  const kinds = templates.map((template) => templateText(lab, template).name).join(' · ');
  return [
    count === 1 ? 'Marked' : `Part ${String(index + 1)}`,
    [
      `${labText[lab].name} (${kinds})`,
      ...(hasMoment(lab) ? [`each student’s time within ± ${String(windowMinutes)} minutes`] : []),
      ...(minutesAllowed === null
        ? []
        : [`time counts: ${String(minutesAllowed)} minutes for full marks`]),
      ...(count === 1 ? [] : [`weight ${markText(weight)}`]),
    ].join('; '),
  ];
}

const side = (valueDeg: number, positive: string, negative: string): string =>
  `${Math.abs(valueDeg).toFixed(2)}° ${valueDeg < 0 ? negative : positive}`;
