import 'server-only';
import { z } from 'zod';
import { course, type LessonSlug } from '../course/lessons';
import { parseScenario } from '../pointing/parse-scenario';
import { scenarioSchema } from '../pointing/scenario';
import { assignmentInputSchema, type AssignmentInput } from './assignment-input';
import { isTimeZone } from '../sky/local-time';
import { labs, type Lab } from '../variants/labs';
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
    weight: true,
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
  weight: number;
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
const lessonSchema = z.enum(course.map(({ slug }) => slug));
/** A lesson that the course no longer has cannot be read. */
const lessonOf = (reference: string): LessonSlug[] => {
  const parsed = lessonSchema.safeParse(reference);
  return parsed.success ? [parsed.data] : [];
};
const templatesSchema = z.array(z.string()).min(1);

/** One marked part, as the database keeps it. */
export type StoredPart = {
  partId: string;
  lab: Lab;
  templates: string[];
  windowMinutes: number;
  minutesAllowed: number | null;
  weight: number;
};

/** The marked parts of an assignment in their order, the one evening of them all, and the lessons to read. */
export function readParts(rows: readonly PartRow[]) {
  const marked = rows.filter(({ kind }) => kind === 'lab');
  const version = marked[0]?.scenarioVersion;
  if (version === null || version === undefined) {
    throw new Error('an assignment without a lab and its scenario is in the database');
  }
  return {
    parts: marked.map((row): StoredPart => ({
      partId: row.id,
      lab: labSchema.parse(row.reference),
      templates: templatesSchema.parse(row.templates),
      windowMinutes: row.windowMinutes ?? 0,
      minutesAllowed: row.minutesAllowed,
      weight: row.weight,
    })),
    lessons: rows.flatMap(({ kind, reference }) => (kind === 'lesson' ? lessonOf(reference) : [])),
    scenarioId: version.scenarioId,
    scenarioVersionId: version.id,
    scenarioVersion: version.version,
    placeName: version.placeName,
    kitId: version.kitId,
    siteId: version.siteId,
    scenario: scenarioSchema.parse(version.content),
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
