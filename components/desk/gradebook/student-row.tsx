import { memo } from 'react';
import { gradebookStateText } from '@/components/grading/gradebook/gradebook-state-text';
import { markText } from '@/components/grading/mark-text';
import { classNames } from '@/components/ui/class-names';
import { routes } from '@/lib/routes';
import type { GridView } from './grid-order';
import type { GridCell, GridColumn, GridRow } from './grid-rows';

/** One student: card and name, the mean, a cell for each assignment. Drawn anew only when it changes. */
export const StudentRow = memo(function StudentRow({
  row,
  columns,
  hit,
}: {
  row: GridRow;
  columns: readonly GridColumn[];
  hit: GridView['state'];
}) {
  return (
    <tr data-student={row.id} className={row.left ? 'text-soft' : undefined}>
      <th scope="row">
        <span className="me-1.5 inline-block min-w-5 text-end text-xs font-normal text-soft">
          <span className="sr-only">Card </span>
          {row.card}
        </span>
        <a href={routes.teacher.student(row.id)} tabIndex={-1}>
          {row.name}
        </a>
        {row.left ? <span className="ms-1.5 text-xs font-normal text-soft">left</span> : null}
      </th>
      <td tabIndex={-1} className="number font-semibold">
        {row.mean === null ? '–' : markText(row.mean)}
      </td>
      {columns.map((column, index) => {
        const cell = row.cells[index];
        return cell === undefined ? null : (
          <td
            key={column.id}
            data-assignment={column.id}
            className={cell.state === hit ? 'bg-accent-soft' : undefined}
          >
            <Cell {...{ cell, row, column }} />
          </td>
        );
      })}
    </tr>
  );
});

const tones: Partial<Record<GridCell['state'], string>> = {
  complete: 'text-good',
  missing: 'text-danger',
  late: 'text-caution',
  'not-yet': 'text-caution',
  returned: 'text-accent',
  'needs-sign-off': 'text-accent',
};

/** Kept light: a class of 200 with 40 assignments has 8,000 of them. */
function Cell({ cell, row, column }: { cell: GridCell; row: GridRow; column: GridColumn }) {
  const { word } = gradebookStateText[cell.state];
  const shown = cell.mark === '' ? word : `${cell.mark} ${word}`;
  return (
    <>
      <a
        href={routes.teacher.gradebookCell(row.id, column.id)}
        tabIndex={-1}
        aria-label={`${row.name}, ${column.title}: ${shown}`}
        className={classNames(
          'inline-block min-h-(--target-small)',
          !row.left && tones[cell.state],
        )}
      >
        {cell.mark === '' ? null : <b className="me-1.5 text-base text-ink">{cell.mark}</b>}
        {word}
      </a>
      {cell.notes === '' ? null : <span className="block text-xs text-soft">{cell.notes}</span>}
    </>
  );
}
