// Longer than 250 lines by the names of its numbers: what the form sends and what is said of it go by the
// same paths, and are read side by side.
import { lowerFirst } from '@/lib/wording/capital';
import { scenarioSchema, type Scenario } from '@/lib/pointing/scenario';
import { assignmentInputSchema } from '@/lib/data/assignment-input';
import { hasMoment, labOptions } from '@/lib/variants/labs';
import type { PartDraft } from './part-draft';
import { joinLocalTime } from '../local-time-text';
import { readNumber } from '../read-number';
import {
  eyepieceNumbers,
  settingNumbers,
  skyNumbers,
  telescopeNumbers,
  type AssignmentDraft,
} from './assignment-draft';
import { skyStandIn } from './sky-stand-in';

/** A problem with the control it belongs to: `field` is that control's id. */
export type DraftProblem = { code: string; message: string; field?: string };

/**
 * What the form sends. `input` is read with assignmentInputSchema, its due time still empty: the
 * server turns `dueLocalTime` into an instant, because zone rules live there.
 */
export type DraftInput = { input: unknown; dueLocalTime: string | null };

const numbersOf = (
  texts: Readonly<Record<string, string>>,
  keys: readonly string[],
): Record<string, number | string> =>
  Object.fromEntries(keys.map((key) => [key, readNumber(texts[key] ?? '')]));

const signed = (text: string, negative: boolean): number | string => {
  const value = readNumber(text);
  // Adding 0 turns the −0 of "0° W" into 0.
  return typeof value === 'number' ? (negative ? -value : value) + 0 : value;
};

const share = (text: string): number | string => {
  const value = readNumber(text);
  return typeof value === 'number' ? value / 100 : value;
};

const placeOf = (draft: AssignmentDraft) => ({
  latitudeDeg: signed(draft.latitude, draft.latitudeSide === 'S'),
  longitudeDeg: signed(draft.longitude, draft.longitudeSide === 'W'),
  elevationM: draft.elevationM.trim() === '' ? 0 : readNumber(draft.elevationM),
});

/** The place as numbers, or null while it is not yet one. */
export function draftPlace(draft: AssignmentDraft): Scenario['place'] | null {
  const parsed = scenarioSchema.shape.place.safeParse(placeOf(draft));
  return parsed.success ? parsed.data : null;
}

export const draftDueLocalTime = (draft: AssignmentDraft): string | null =>
  draft.dueDate === '' && draft.dueTime === ''
    ? null
    : joinLocalTime(draft.dueDate, draft.dueTime, draft.dueOffset);

/** Questions on lessons know neither place, time nor telescope: where there is nothing else, the form asks for none. */
export const isWithoutSky = ({ parts }: Pick<AssignmentDraft, 'parts'>): boolean =>
  parts.length > 0 && parts.every(({ lab }) => labOptions[lab].withoutSky === true);

const partInput = (part: PartDraft) => {
  const { canBeTimed } = labOptions[part.lab];
  return {
    ...(part.id === undefined ? {} : { id: part.id }),
    lab: part.lab,
    templates: part.templates,
    windowMinutes: hasMoment(part.lab) ? readNumber(part.windowMinutes) : 0,
    minutesAllowed:
      part.minutesAllowed.trim() === '' || !canBeTimed ? null : readNumber(part.minutesAllowed),
    weight: readNumber(part.weight),
  };
};

export function draftToInput(draft: AssignmentDraft): DraftInput {
  return {
    dueLocalTime: draftDueLocalTime(draft),
    input: {
      title: draft.title,
      placeName: draft.placeName,
      kitId: draft.kitId,
      siteId: draft.siteId,
      scenario: {
        place: placeOf(draft),
        horizon: draft.horizon.points,
        localTime: joinLocalTime(draft.date, draft.time, draft.offset),
        timeZone: draft.timeZone.trim(),
        telescope: {
          ...numbersOf(draft.telescope, telescopeNumbers),
          computer: draft.telescope.computer,
        },
        eyepiece: numbersOf(draft.eyepiece, eyepieceNumbers),
        sky: numbersOf(draft.sky, skyNumbers),
        clouds: draft.clouds,
        settings: numbersOf(draft.settings, settingNumbers),
      },
      parts: draft.parts.map(partInput),
      lessons: draft.lessons,
      weight: readNumber(draft.weight),
      needsSignOff: draft.needsSignOff,
      ...(isWithoutSky(draft) ? skyStandIn : {}),
      policy: {
        attemptsAllowed:
          draft.attemptsAllowed.trim() === '' ? null : readNumber(draft.attemptsAllowed),
        dueAt: null,
        graceMinutes: readNumber(draft.graceMinutes),
        latePenaltyPerDay: share(draft.latePercentPerDay),
        latePenaltyCap: share(draft.latePercentCap),
        passMark: readNumber(draft.passMark),
        feedback: draft.feedback,
        counting: draft.counting,
      },
      dueTimeZone: draft.dueTimeZone,
    },
  };
}

/** Names of the numbers as the form shows them, by their path in the input. */
const labels: Readonly<Record<string, string>> = {
  title: 'Title',
  placeName: 'Name of the place',
  'scenario.place.latitudeDeg': 'Latitude',
  'scenario.place.longitudeDeg': 'Longitude',
  'scenario.place.elevationM': 'Elevation',
  'scenario.telescope.focalLengthMm': 'Focal length of the telescope',
  'scenario.telescope.apertureMm': 'Aperture',
  'scenario.telescope.centringArcmin': 'Centring error',
  'scenario.telescope.altitudeZeroArcmin': 'Altitude zero error',
  'scenario.telescope.coneArcmin': 'Cone error',
  'scenario.telescope.axisSkewArcmin': 'Axis skew',
  'scenario.eyepiece.focalLengthMm': 'Focal length of the eyepiece',
  'scenario.eyepiece.apparentFieldDeg': 'Apparent field',
  'scenario.sky.darkestLimitMagnitude': 'Faintest star on a moonless night',
  'scenario.sky.extinction': 'Extinction',
  'scenario.settings.faintestMagnitude': 'Faintest alignment star',
  'scenario.settings.lowestAltitudeDeg': 'Lowest altitude',
  'scenario.settings.highestAltitudeDeg': 'Highest altitude',
  'scenario.settings.horizonMarginDeg': 'Margin above the skyline',
  'scenario.settings.moonDistanceDeg': 'Distance from the Moon',
  'parts.windowMinutes': 'Window of time',
  'parts.minutesAllowed': 'Time for full marks',
  'parts.weight': 'Weight of the part',
  weight: 'Weight of the assignment',
  'policy.attemptsAllowed': 'Attempts',
  'policy.graceMinutes': 'Grace',
  'policy.latePenaltyPerDay': 'Taken off per day late',
  'policy.latePenaltyCap': 'Most taken off',
  'policy.passMark': 'Pass mark',
};
/** Shares are typed as hundredths, and west and south as a side: limits are told the way they are typed. */
const shownLimit = (path: string, limit: number): string => {
  if (path === 'policy.latePenaltyPerDay' || path === 'policy.latePenaltyCap')
    return `${limit * 100} %`;
  return path.startsWith('scenario.place.l') ? `${Math.abs(limit)}°` : String(limit);
};

type Issue = ReturnType<typeof issuesOf>[number];
function issuesOf(draft: AssignmentDraft) {
  const { input, dueLocalTime } = draftToInput(draft);
  const parsed = assignmentInputSchema.safeParse(withDuePlaceholder(input, dueLocalTime !== null));
  return parsed.success ? [] : parsed.error.issues;
}

/** Some rules ask whether there is a due time; any instant answers that before the server knows the right one. */
function withDuePlaceholder(input: unknown, hasDue: boolean): unknown {
  if (!hasDue || typeof input !== 'object' || input === null || !('policy' in input)) return input;
  const { policy } = input;
  return typeof policy === 'object'
    ? { ...input, policy: { ...policy, dueAt: '2000-01-01T00:00:00Z' } }
    : input;
}

/** Everything the browser can tell is wrong, in the order of the form, before the server is asked. */
export function draftProblems(draft: AssignmentDraft): DraftProblem[] {
  const several = draft.parts.length > 1;
  const problems = [
    ...issuesOf(draft).map((issue) => problemOf(issue, several)),
    ...skyProblems(draft),
  ];
  if ((draft.dueDate === '') !== (draft.dueTime === '')) {
    problems.push({
      code: 'half-due',
      field: 'policy.dueAt',
      message: 'Give both the date and the time it is due, or neither.',
    });
  }
  return problems;
}

/** What a shape alone does not tell of place, time and limits. */
function skyProblems(draft: AssignmentDraft): DraftProblem[] {
  if (isWithoutSky(draft)) return [];
  const problems: DraftProblem[] = [];
  if (draft.date === '' || draft.time === '') {
    problems.push({
      code: 'no-time',
      field: 'scenario.localTime',
      message: 'Give the date and the time of the observation.',
    });
  }
  if (draft.timeZone.trim() === '') {
    problems.push({
      code: 'no-zone',
      field: 'scenario.timeZone',
      message: 'Give the time zone of the place, such as Europe/Paris.',
    });
  }
  const lowest = readNumber(draft.settings.lowestAltitudeDeg);
  const highest = readNumber(draft.settings.highestAltitudeDeg);
  if (typeof lowest === 'number' && typeof highest === 'number' && lowest >= highest) {
    problems.push({
      code: 'altitudes-cross',
      field: 'scenario.settings.highestAltitudeDeg',
      message: 'Highest altitude: it must lie above the lowest altitude.',
    });
  }
  return problems;
}

/** `severalParts`: then a part is called by its number. */
function problemOf(issue: Issue, severalParts: boolean): DraftProblem {
  const path = issue.path.map(String).join('.');
  const field = path.startsWith('scenario.horizon')
    ? 'scenario.horizon'
    : path.replace(/^(parts\.\d+\.templates)\..*$/, '$1');
  const label = labels[path.replace(/^parts\.\d+/, 'parts')];
  const said = label === undefined ? issue.message : `${label}: ${complaint(issue, path)}`;
  const part = /^parts\.(\d+)/.exec(path)?.[1];
  return {
    code: issue.code,
    field,
    message:
      part !== undefined && severalParts
        ? `Part ${String(Number(part) + 1)}: ${lowerFirst(said)}`
        : said,
  };
}

function complaint(issue: Issue, path: string): string {
  if (issue.code === 'invalid_type') {
    return issue.expected === 'int' ? 'give a whole number.' : 'give a number.';
  }
  if (issue.code === 'too_small' && issue.origin !== 'string') {
    const side = issue.inclusive === false ? 'more than' : 'at least';
    return path === 'scenario.place.latitudeDeg' || path === 'scenario.place.longitudeDeg'
      ? `at most ${shownLimit(path, Number(issue.minimum))}.`
      : `${side} ${shownLimit(path, Number(issue.minimum))}.`;
  }
  if (issue.code === 'too_big' && issue.origin !== 'string')
    return `at most ${shownLimit(path, Number(issue.maximum))}.`;
  return lowerFirst(issue.message);
}
