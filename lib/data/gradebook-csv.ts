import { stringify } from 'csv-stringify/sync';
import type { GradebookState } from '../grading/gradebook-state';
import { gradebookStateWords } from '../grading/gradebook-state-words';
import { shownMark } from '../grading/shown-mark';
import { csvText } from './csv-text';

/** What is written of a gradebook. */
type WrittenGradebook = {
  students: readonly { id: string; displayName: string; cardNumber: number }[];
  assignments: readonly { id: string; title: string }[];
  cells: readonly {
    studentId: string;
    assignmentId: string;
    state: GradebookState;
    mark: number | null;
  }[];
};

/** A column after those of the marks, for who chose it. */
type FurtherColumn = { head: string; of: (studentId: string) => string | number };

/**
 * Card number, name, and for each assignment mark and state; RFC 4180, UTF-8 with its mark, so that
 * spreadsheets show names rightly. Numbers stay numbers. No accommodations, unless they are handed in.
 */
export function gradebookCsv(
  { students, assignments, cells }: WrittenGradebook,
  further: readonly FurtherColumn[] = [],
): string {
  const cellOf = new Map(cells.map((cell) => [`${cell.studentId} ${cell.assignmentId}`, cell]));
  const header = [
    'Card',
    'Name',
    ...assignments.flatMap(({ title }) => [csvText(title), csvText(`${title}: state`)]),
    ...further.map(({ head }) => head),
  ];
  const rows = students.map(({ id, cardNumber, displayName }) => [
    cardNumber,
    csvText(displayName),
    ...assignments.flatMap((assignment) => {
      const cell = cellOf.get(`${id} ${assignment.id}`);
      const mark = cell === undefined || cell.mark === null ? null : shownMark(cell.mark);
      return [mark, cell === undefined ? '' : gradebookStateWords[cell.state]];
    }),
    ...further.map(({ of }) => of(id)),
  ]);
  return stringify([header, ...rows], { bom: true, record_delimiter: 'windows' });
}
