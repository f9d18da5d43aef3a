import type { ExportedAttempt } from './exported-attempt';
import { isoDuration } from './iso-duration';

/*
 * Statements of the Experience API: 1.0.3, part two, section 2.4 (IEEE 9274.1.1 keeps these properties).
 * `version`, `stored` and `authority` are left to whoever takes the statements in (2.4).
 */

/** Of the registry of ADL (adlnet.gov/expapi): a verb means what its address says. */
const verbs = {
  attempted: 'http://adlnet.gov/expapi/verbs/attempted',
  completed: 'http://adlnet.gov/expapi/verbs/completed',
  passed: 'http://adlnet.gov/expapi/verbs/passed',
  failed: 'http://adlnet.gov/expapi/verbs/failed',
} as const;
type Verb = keyof typeof verbs;
const activityTypes = {
  simulation: 'http://adlnet.gov/expapi/activities/simulation',
  assessment: 'http://adlnet.gov/expapi/activities/assessment',
} as const;

const language = 'en-GB';
type Activity = {
  objectType: 'Activity';
  id: string;
  definition: { name: Readonly<Record<string, string>>; type: string };
};
export type Statement = {
  id: string;
  actor: {
    objectType: 'Agent';
    name?: string;
    account: { homePage: string; name: string };
  };
  verb: { id: string; display: Readonly<Record<string, string>> };
  object: Activity;
  result?: {
    score?: { scaled: number; raw: number; min: 0; max: 100 };
    success?: boolean;
    completion: boolean;
    duration: string;
  };
  context: {
    registration: string;
    platform: 'Duskbench';
    language: typeof language;
    contextActivities?: { parent: Activity[] };
    extensions?: Readonly<Record<string, unknown>>;
  };
  /** UTC, ISO 8601. */
  timestamp: string;
};

export type StatementSource = {
  /** The system's own address: account and activities are named under it. */
  homePage: string;
  /** A UUID that depends on the name alone, so that a second export is the first one again. */
  uuidOf: (name: string) => string;
};

/**
 * What an attempt tells: that it was begun and, once handed in, that it passed, failed or, in practice
 * and where nothing is marked, was completed. The student is an account with an opaque name (2.4.2.4);
 * the name to show stands beside it only where the attempt carries one.
 */
export function statementsOf(attempt: ExportedAttempt, source: StatementSource): Statement[] {
  const { startedAt, submittedAt } = attempt;
  const begun = statement(attempt, 'attempted', startedAt, source);
  if (submittedAt === null) return [begun];
  return [
    begun,
    { ...statement(attempt, endOf(attempt), submittedAt, source), result: resultOf(attempt) },
  ];
}

function endOf({ mode, mark }: ExportedAttempt): Verb {
  if (mode === 'practice' || mark === null) return 'completed';
  return mark.passed ? 'passed' : 'failed';
}

/**
 * What is handed in is named by what is told of it, too: a statement never changes (2.3), so that one
 * that was marked again, or is no longer late, is another beside the first.
 */
const handedInName = ({ mark, latePenalty }: ExportedAttempt, verb: Verb): string =>
  mark === null
    ? `handed-in ${verb}`
    : `handed-in ${verb} ${String(mark.graderVersion)} ${String(mark.total)} ${String(latePenalty)}`;

function statement(
  attempt: ExportedAttempt,
  verb: Verb,
  at: Date,
  { homePage, uuidOf }: StatementSource,
): Statement {
  const { id, studentId, name, lab, labTitle, assignment, mode, mark } = attempt;
  const parent: Activity | null =
    assignment === null
      ? null
      : activity(`${homePage}/assignments/${assignment.id}`, assignment.title, 'assessment');
  const begun = verb === 'attempted';
  return {
    id: uuidOf(`attempt ${id} ${begun ? 'begun' : handedInName(attempt, verb)}`),
    actor: {
      objectType: 'Agent',
      ...(name === '' ? {} : { name }),
      account: { homePage, name: studentId },
    },
    verb: { id: verbs[verb], display: { [language]: verb } },
    object: activity(`${homePage}/labs/${lab}`, labTitle, 'simulation'),
    context: {
      registration: uuidOf(`attempt ${id}`),
      platform: 'Duskbench',
      language,
      ...(parent === null ? {} : { contextActivities: { parent: [parent] } }),
      extensions: {
        [`${homePage}/terms/mode`]: mode,
        [`${homePage}/terms/attempt-number`]: attempt.number,
        ...(begun || mark === null
          ? {}
          : {
              [`${homePage}/terms/late-penalty`]: attempt.latePenalty,
              [`${homePage}/terms/safety-gates-failed`]: mark.gates,
            }),
      },
    },
    timestamp: at.toISOString(),
  };
}

const activity = (id: string, name: string, type: keyof typeof activityTypes): Activity => ({
  objectType: 'Activity',
  id,
  definition: { name: { [language]: name }, type: activityTypes[type] },
});

function resultOf({ startedAt, submittedAt, mark, mode }: ExportedAttempt): Statement['result'] {
  const ms = Math.max(0, (submittedAt ?? startedAt).getTime() - startedAt.getTime());
  return {
    ...(mark === null
      ? {}
      : {
          // As it was marked; what lateness takes stands in the context, and success goes by what is left.
          score: { scaled: mark.total / 100, raw: mark.total, min: 0, max: 100 },
          // Practice has no pass mark of its own.
          ...(mode === 'practice' ? {} : { success: mark.passed }),
        }),
    completion: true,
    duration: isoDuration(ms),
  };
}
