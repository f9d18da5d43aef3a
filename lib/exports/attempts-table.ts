import { afterPenalty } from '../grading/counted-mark';
import { shownMark } from '../grading/shown-mark';
import type { ExportedAttempt } from './exported-attempt';
import { instantCell, type Table } from './table';

const header = [
  ...['Card', 'Name', 'Assignment', 'Part', 'Lab', 'Kind', 'Number'],
  ...['Started (UTC)', 'Handed in (UTC)', 'Mark before lateness', 'Late penalty in per cent'],
  ...['Mark that counts', 'Passed', 'Safety gates failed', 'Given back (UTC)', 'Grader version'],
];

/** One row an attempt, practice included. Practice never counts: its last columns stay empty. */
export function attemptsTable(attempts: readonly ExportedAttempt[]): Table {
  return [
    header,
    ...attempts.map((attempt) => {
      const { cardNumber, name, assignment, part, lab, mode, number, mark, latePenalty } = attempt;
      const counts = mode === 'check' && mark !== null;
      return [
        ...[cardNumber, name, assignment?.title ?? '', part, lab, mode, number],
        instantCell(attempt.startedAt),
        attempt.submittedAt === null ? null : instantCell(attempt.submittedAt),
        mark === null ? null : shownMark(mark.total),
        counts ? shownMark(100 * latePenalty) : null,
        counts ? shownMark(afterPenalty({ raw: mark.total, latePenalty })) : null,
        mark === null ? null : mark.passed ? 'yes' : 'no',
        mark === null ? null : mark.gates.join('; '),
        attempt.returnedAt === null ? null : instantCell(attempt.returnedAt),
        mark?.graderVersion ?? null,
      ];
    }),
  ];
}
