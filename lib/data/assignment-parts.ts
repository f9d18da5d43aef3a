import 'server-only';
import { z } from 'zod';
import { parseScenario } from '../pointing/parse-scenario';
import { scenarioSchema } from '../pointing/scenario';
import { assignmentInputSchema, type AssignmentInput } from './assignment-input';
import { isTimeZone } from '../sky/local-time';
import { labs } from '../variants/labs';
import { firstField, firstMessage } from './names';
import { failure, success, type Result } from './result';

/** Selects what {@link readParts} reads. */
export const partsSelect = {
  orderBy: { position: 'asc' },
  select: {
    id: true,
    kind: true,
    reference: true,
    templates: true,
    windowMinutes: true,
    minutesAllowed: true,
    scenarioVersion: {
      select: {
        id: true,
        scenarioId: true,
        version: true,
        placeName: true,
        kitId: true,
        siteId: true,
        content: true,
      },
    },
  },
} as const;

type PartRow = {
  id: string;
  kind: 'lesson' | 'lab';
  reference: string;
  templates: unknown;
  windowMinutes: number | null;
  minutesAllowed: number | null;
  scenarioVersion: {
    id: string;
    scenarioId: string;
    version: number;
    placeName: string;
    kitId: string | null;
    siteId: string | null;
    content: unknown;
  } | null;
};

const labSchema = z.enum(labs);
const templatesSchema = z.array(z.string()).min(1);

/** The lab of an assignment with its sky, and its lesson where it has one. */
export function readParts(parts: readonly PartRow[]) {
  const lab = parts.find((part) => part.kind === 'lab');
  const version = lab?.scenarioVersion;
  if (lab === undefined || version === null || version === undefined) {
    throw new Error('an assignment without a lab and its scenario is in the database');
  }
  return {
    lab: labSchema.parse(lab.reference),
    partId: lab.id,
    scenarioId: version.scenarioId,
    scenarioVersionId: version.id,
    scenarioVersion: version.version,
    placeName: version.placeName,
    kitId: version.kitId,
    siteId: version.siteId,
    scenario: scenarioSchema.parse(version.content),
    templates: templatesSchema.parse(lab.templates),
    windowMinutes: lab.windowMinutes ?? 0,
    minutesAllowed: lab.minutesAllowed,
    lessonSlug: parts.find((part) => part.kind === 'lesson')?.reference ?? null,
  };
}

/** Reads the form's input and everything that a shape alone does not tell. */
export function readAssignmentInput(input: unknown): Result<AssignmentInput> {
  const parsed = assignmentInputSchema.safeParse(input);
  if (!parsed.success) {
    // The scenario's own reader says it better.
    const fromScenario = scenarioProblem(input);
    if (fromScenario !== null && firstField(parsed.error)?.startsWith('scenario') === true)
      return fromScenario;
    return failure('bad-input', firstMessage(parsed.error), firstField(parsed.error));
  }
  if (!isTimeZone(parsed.data.dueTimeZone)) {
    return failure(
      'bad-input',
      'This time zone is not known. Choose one from the list.',
      'dueTimeZone',
    );
  }
  return scenarioProblem(parsed.data) ?? success(parsed.data);
}

function scenarioProblem(input: unknown) {
  if (typeof input !== 'object' || input === null || !('scenario' in input)) return null;
  const parsed = parseScenario(input.scenario);
  if (parsed.ok) return null;
  const [problem] = parsed.problems;
  if (problem === undefined)
    return failure('bad-input', 'The scenario cannot be read.', 'scenario');
  return failure('bad-input', `${problem.field} ${problem.message}`, `scenario.${problem.field}`);
}
