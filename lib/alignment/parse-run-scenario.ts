import { parseScenario } from '../pointing/parse-scenario';
import type { Scenario } from '../pointing/scenario';
import { shapeProblems, type ScenarioProblem } from '../pointing/scenario-problems';
import { runGroupsSchema, type RunGroups } from './run-scenario';

export type ParsedRunScenario =
  | {
      ok: true;
      scenario: Scenario;
      /** UTC, ISO 8601. */
      instant: string;
      groups: RunGroups;
    }
  | { ok: false; problems: readonly ScenarioProblem[] };

/** Reads a scenario with or without what a run adds to it; all problems are reported together. */
export function parseRunScenario(json: unknown): ParsedRunScenario {
  const [rest, added] = split(json);
  const groups = runGroupsSchema.safeParse(added);
  const parsed = parseScenario(rest);
  if (groups.success && parsed.ok) return { ...parsed, groups: groups.data };
  return {
    ok: false,
    problems: [
      ...(parsed.ok ? [] : parsed.problems),
      ...(groups.success ? [] : shapeProblems(groups.error, added)),
    ],
  };
}

/** A scenario proper, and the groups of a run. What is no object at all goes to the first. */
function split(json: unknown): [scenario: unknown, groups: object] {
  if (typeof json !== 'object' || json === null || Array.isArray(json)) return [json, {}];
  const isGroup = ([key]: [string, unknown]) => key in runGroupsSchema.shape;
  const entries = Object.entries(json);
  return [
    Object.fromEntries(entries.filter((entry) => !isGroup(entry))),
    Object.fromEntries(entries.filter(isGroup)),
  ];
}
