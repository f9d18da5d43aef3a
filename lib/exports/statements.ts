import type { ExportedAttempt } from './exported-attempt';
import { isoDuration } from './iso-duration';
import {
  activity,
  actor,
  language,
  verbs,
  type Activity,
  type Statement,
  type StatementSource,
  type Verb,
} from './statement';

/**
 * What an attempt tells: that it was begun and, once handed in, that it passed, failed or, in practice
 * and where nothing is marked, was completed.
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
    actor: actor({ studentId, name }, homePage),
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
