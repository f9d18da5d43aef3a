import { zonedTimeText } from '@/components/grading/zoned-time';
import { markText } from '@/components/grading/mark-text';
import type { Gradebook, GradebookCell, GradebookState } from '@/lib/data/gradebook';

/** A gradebook as short as the browser can do with: thousands of cells travel and are drawn. */
export type GridCell = {
  state: GradebookState;
  /** As it is shown; empty: none yet. */
  mark: string;
  /** What mark and state leave unsaid. */
  notes: string;
};
export type GridColumn = {
  id: string;
  title: string;
  /** Due time, pass mark, parts and weight in one line. */
  about: string;
  /** The class's mean as it is shown. */
  mean: string;
};
export type GridRow = {
  id: string;
  name: string;
  card: number;
  left: boolean;
  groups: readonly string[];
  mean: number | null;
  cells: readonly GridCell[];
};

/** On the way to the browser: no more than there is to say, and no names for it. */
type PackedCell = [state: GradebookState, mark?: string, notes?: string];
export type PackedRow = Omit<GridRow, 'cells'> & { cells: readonly PackedCell[] };

const pack = ({ state, mark, notes }: GridCell): PackedCell => {
  if (notes !== '') return [state, mark, notes];
  return mark === '' ? [state] : [state, mark];
};

export const unpackedRow = (row: PackedRow): GridRow => ({
  ...row,
  cells: row.cells.map(([state, mark = '', notes = '']) => ({ state, mark, notes })),
});

const joined = (notes: readonly string[]): string =>
  notes.filter((note) => note !== '').join(' · ');

export function gridColumns({ assignments }: Gradebook, timeZone: string): GridColumn[] {
  const weighted = assignments.some(({ weight }) => weight !== assignments[0]?.weight);
  return assignments.map(({ id, title, dueAt, passMark, parts, weight, mean }) => ({
    id,
    title,
    about: joined([
      dueAt === null ? 'no due time' : `due ${zonedTimeText(dueAt, timeZone)}`,
      `pass ${markText(passMark)}`,
      parts.length > 1 ? `${String(parts.length)} parts` : '',
      weighted ? `weight ${String(weight)}` : '',
    ]),
    mean: mean === null ? '–' : markText(mean),
  }));
}

export function gridRows(gradebook: Gradebook, timeZone: string): PackedRow[] {
  const count = gradebook.assignments.length;
  return gradebook.students.map((student, index) => ({
    id: student.id,
    name: student.displayName,
    card: student.cardNumber,
    left: student.left,
    groups: student.groupIds,
    mean: student.mean,
    cells: gradebook.cells.slice(index * count, (index + 1) * count).map((cell) =>
      pack({
        state: cell.state,
        mark: cell.mark === null ? '' : markText(cell.mark),
        notes: cellNotes(cell, timeZone),
      }),
    ),
  }));
}

/** What a cell's mark and state leave unsaid. */
export function cellNotes(cell: GradebookCell, timeZone: string): string {
  const marked = cell.parts.filter(({ state }) => state !== 'not-started' && state !== 'open');
  return joined([
    cell.overridden ? 'set by hand' : '',
    cell.gateFailed ? 'safety gate failed' : '',
    cell.latePenalty !== null && cell.latePenalty > 0
      ? `late, −${markText(cell.latePenalty * 100)} %`
      : '',
    cell.parts.length > 1 && marked.length > 0
      ? `${String(marked.length)} of ${String(cell.parts.length)} parts`
      : '',
    cell.parts.length === 1 && cell.attempts > 1 ? `${String(cell.attempts)} attempts` : '',
    cell.extendedDueAt === null || cell.state === 'complete'
      ? ''
      : `own due time ${zonedTimeText(cell.extendedDueAt, timeZone)}`,
  ]);
}
