import type { z } from 'zod';
import { checkHorizon } from '../sky/horizon';
import { instantOfLocalTime, type LocalTimeResult } from '../sky/local-time';
import { scenarioSchema, type Scenario } from './scenario';

/** What is wrong with one field, in a sentence that goes after its name, and what to do. */
export type ScenarioProblem = { field: string; message: string };

export type ParsedScenario =
  | {
      ok: true;
      scenario: Scenario;
      /** UTC, ISO 8601. */
      instant: string;
    }
  | { ok: false; problems: readonly ScenarioProblem[] };

/**
 * Reads a scenario as people and files write it. All problems of shape are reported together; what
 * depends on several fields (the clock, the skyline, the pair of limits) once the shape is right.
 */
export function parseScenario(json: unknown): ParsedScenario {
  const parsed = scenarioSchema.safeParse(json);
  if (!parsed.success) {
    return { ok: false, problems: parsed.error.issues.flatMap((issue) => inWords(issue, json)) };
  }
  const scenario = parsed.data;
  const time = instantOfLocalTime(scenario.localTime, scenario.timeZone);
  const problems = [
    ...(time.ok ? [] : [timeProblem(scenario, time)]),
    ...horizonProblems(scenario),
    ...limitProblems(scenario),
  ];
  return time.ok && problems.length === 0
    ? { ok: true, scenario, instant: time.instant }
    : { ok: false, problems };
}

function horizonProblems({ horizon }: Scenario): ScenarioProblem[] {
  const check = checkHorizon(horizon);
  return check.ok ? [] : [{ field: `horizon[${check.index}]`, message: check.message }];
}

function limitProblems({ settings }: Scenario): ScenarioProblem[] {
  const { lowestAltitudeDeg: lowest, highestAltitudeDeg: highest } = settings;
  return lowest < highest
    ? []
    : [
        {
          field: 'settings.lowestAltitudeDeg',
          message: `is ${lowest}, which leaves nothing below the highest altitude of ${highest}: make it smaller than settings.highestAltitudeDeg.`,
        },
      ];
}

function timeProblem(
  { localTime, timeZone }: Scenario,
  time: Extract<LocalTimeResult, { ok: false }>,
): ScenarioProblem {
  const meant = time.candidates.join(' or ');
  const about = (message: string): ScenarioProblem => ({
    field: 'localTime',
    message: `${JSON.stringify(localTime)} ${message}`,
  });
  switch (time.reason) {
    case 'bad-format':
      return about('is not a local time: write it like 2026-12-05T19:30.');
    case 'no-such-date':
      return about('is not in the calendar: check the day and the hour.');
    case 'out-of-range':
      return about('is outside the years 1900 to 2100 that the sky is computed for.');
    case 'unknown-zone':
      return {
        field: 'timeZone',
        message: `${JSON.stringify(timeZone)} is not a known time zone: use a name like Europe/Lisbon or America/Toronto.`,
      };
    case 'does-not-exist':
      return about(
        `does not exist in ${timeZone}: the clocks jump over it. Use the time that they show instead: ${meant}.`,
      );
    case 'exists-twice':
      return about(`comes twice in ${timeZone}: give the offset: ${meant}.`);
    case 'offset-does-not-fit':
      return about(`has an offset that ${timeZone} does not have then: use ${meant}.`);
  }
}

function inWords(issue: z.core.$ZodIssue, json: unknown): ScenarioProblem[] {
  const field = fieldName(issue.path);
  const given = valueAt(json, issue.path);
  const shown = shownValue(given);
  const one = (message: string): ScenarioProblem[] => [{ field, message }];
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({
        field: fieldName([...issue.path, key]),
        message: 'is not a field that a scenario has: check its spelling or take it out.',
      }));
    case 'invalid_type':
      return given === undefined
        ? one(`is missing: give ${kinds[issue.expected] ?? issue.expected}.`)
        : one(`is ${shown}, but must be ${kinds[issue.expected] ?? issue.expected}.`);
    case 'invalid_value': {
      const values = issue.values.map((value) => JSON.stringify(value)).join(' or ');
      return one(
        given === undefined ? `is missing: give ${values}.` : `is ${shown}, but must be ${values}.`,
      );
    }
    case 'too_small':
      return one(
        `is ${shown}, but must be ${issue.inclusive === false ? 'more than' : 'at least'} ${String(issue.minimum)}.`,
      );
    case 'too_big':
      return issue.origin === 'array'
        ? one(`has too many entries: at most ${String(issue.maximum)} are allowed.`)
        : one(
            `is ${shown}, but must be ${issue.inclusive === false ? 'less than' : 'at most'} ${String(issue.maximum)}.`,
          );
    default:
      return one(`cannot be read: ${issue.message}.`);
  }
}

const kinds: Record<string, string> = {
  number: 'a number',
  string: 'a text in quotes',
  object: 'a group of fields in { }',
  array: 'a list in [ ]',
};

function fieldName(path: readonly PropertyKey[]): string {
  const name = path
    .map((key) => (typeof key === 'number' ? `[${key}]` : `.${String(key)}`))
    .join('')
    .replace(/^\./, '');
  return name === '' ? 'scenario' : name;
}

function valueAt(json: unknown, path: readonly PropertyKey[]): unknown {
  let value = json;
  for (const key of path) {
    if (typeof value !== 'object' || value === null) return undefined;
    value = Reflect.get(value, key);
  }
  return value;
}

function shownValue(value: unknown): string {
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'a group of fields';
  const text = JSON.stringify(value) as string | undefined;
  if (text === undefined) return String(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}
