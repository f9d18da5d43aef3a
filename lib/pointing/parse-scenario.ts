import { checkHorizon } from '../sky/horizon';
import { instantOfLocalTime, type LocalTimeResult } from '../sky/local-time';
import { scenarioSchema, type Scenario } from './scenario';
import { shapeProblems, type ScenarioProblem } from './scenario-problems';

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
    return { ok: false, problems: shapeProblems(parsed.error, json) };
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
