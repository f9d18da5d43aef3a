'use client';

import { useRouter } from 'next/navigation';
import { startTransition, useEffect, useId, useMemo, useState, type MouseEvent } from 'react';
import type { FormActionFunction } from '../action-form';
import type { DecisionTarget } from '../decision-forms';
import { StatusLine } from '@/components/ui/status-line';
import { routes } from '@/lib/routes';
import { CellEditor, type EditedCell } from './cell-editor';
import { GridControls } from './grid-controls';
import { orderRows, type GridView } from './grid-order';
import {
  unpackedRow,
  type GridCell,
  type GridColumn,
  type GridRow,
  type PackedRow,
} from './grid-rows';
import { StudentRow } from './student-row';
import { useGridKeys } from './use-grid-keys';

type GradebookGridProps = {
  columns: readonly GridColumn[];
  rows: readonly PackedRow[];
  groups: readonly { id: string; name: string }[];
  timeZone: string;
  /** Null for whoever only looks on. */
  setMark:
    | ((
        target: DecisionTarget,
        ...form: Parameters<FormActionFunction>
      ) => ReturnType<FormActionFunction>)
    | null;
  /** When a mark by hand or an excuse was last changed, by "<student id> <assignment id>". */
  decidedAt: Readonly<Record<string, string>>;
};

/** Students by assignments, moved in by keyboard like a spreadsheet; each cell leads to all about it. */
export function GradebookGrid({
  columns,
  rows: packed,
  groups,
  timeZone,
  setMark,
  decidedAt,
}: GradebookGridProps) {
  const [view, setView] = useState<GridView>({ state: '', group: '', sort: 'card' });
  const [edited, setEdited] = useState<EditedCell | null>(null);
  const [said, setSaid] = useState<string | null>(null);
  const rows = useMemo(() => packed.map(unpackedRow), [packed]);
  const router = useRouter();
  const captionId = useId();
  const { table, onFocus, onKeyDown } = useGridKeys((cell, digit) => {
    const studentId = cell.closest('tr')?.dataset['student'];
    const assignmentId = cell.closest('td')?.dataset['assignment'];
    const row = rows.find(({ id }) => id === studentId);
    const at = columns.findIndex(({ id }) => id === assignmentId);
    const [column, marked] = [columns[at], row?.cells[at]];
    if (setMark === null || row === undefined || column === undefined || marked === undefined)
      return;
    setEdited({ row, column, cell: marked, digit, from: cell });
  });
  /** Thousands of links that each wait for a click would be slow: one listens for all. */
  const follow = (event: MouseEvent) => {
    const link = event.target instanceof Element ? event.target.closest('a') : null;
    const href = link?.getAttribute('href') ?? null;
    if (href === null || event.button !== 0) return;
    if (event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) return;
    event.preventDefault();
    router.push(href);
  };
  const ordered = orderRows(rows, view);
  const whole = useWholeTable(rows.length * columns.length);
  const shown = whole ? ordered : ordered.slice(0, rowsAtFirst);
  return (
    <div className="space-y-3 gradebook-sheet">
      <GridControls
        {...{ view, groups, onChange: setView }}
        shown={ordered.length}
        all={rows.length}
        mayType={setMark !== null}
      />
      <StatusLine className={said === null ? 'sr-only' : 'no-print'}>{said}</StatusLine>
      <div
        data-first-column="sticky"
        className="table-frame relative max-h-[88dvh] scroll-ps-36 sm:scroll-ps-48 scroll-pt-24 overflow-auto rounded-b-lg border border-t-2 border-line border-t-strong bg-panel"
      >
        {/* The grid pattern is a table whose cells are moved to by arrow keys. */}
        <table
          ref={table}
          // eslint-disable-next-line jsx-a11y/no-noninteractive-element-to-interactive-role
          role="grid"
          aria-labelledby={captionId}
          aria-readonly={setMark === null}
          className="table-fixed [&_a]:underline [&_a]:decoration-dotted [&_a]:underline-offset-4 [&_a:hover]:decoration-solid [&_td:last-child]:border-e-0"
          onClick={follow}
          onFocus={onFocus}
          onKeyDown={onKeyDown}
        >
          <caption id={captionId} className="sr-only">
            Gradebook: students by assignments
          </caption>
          <colgroup>
            <col className="w-32 sm:w-44" />
            <col className="w-18" />
            {columns.map(({ id }) => (
              <col key={id} className="w-40" />
            ))}
          </colgroup>
          <thead>
            <tr>
              <th scope="col" tabIndex={-1}>
                Student
              </th>
              <th scope="col" tabIndex={-1} className="number">
                Mean
              </th>
              {columns.map(({ id, title, about }) => (
                <th key={id} scope="col">
                  <a href={routes.teacher.assignment(id)} tabIndex={-1}>
                    {title}
                  </a>
                  <span className="block text-xs font-normal text-soft">{about}</span>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {shown.map((row) => (
              <StudentRow key={row.id} {...{ row, columns, hit: view.state }} />
            ))}
          </tbody>
          <tbody>
            <tr className="[&>*]:border-t-2 [&>*]:border-t-strong">
              <th scope="row" tabIndex={-1}>
                Class mean
              </th>
              <td tabIndex={-1} />
              {columns.map(({ id, mean }) => (
                <td key={id} tabIndex={-1} className="font-figures font-semibold">
                  {mean}
                </td>
              ))}
            </tr>
          </tbody>
        </table>
      </div>
      {setMark === null || edited === null ? null : (
        <CellEditor
          edited={{ ...edited, cell: cellNow(edited, rows, columns) }}
          action={setMark.bind(null, {
            studentId: edited.row.id,
            assignmentId: edited.column.id,
            timeZone,
            openedOn: {
              override: decidedAt[`${edited.row.id} ${edited.column.id}`] ?? null,
              due: null,
            },
          })}
          onClose={(answer) => {
            setEdited(null);
            setSaid(
              answer === null ? null : `${edited.row.name}, ${edited.column.title}: ${answer}`,
            );
          }}
        />
      )}
    </div>
  );
}

/** As the page has it now: a colleague's mark that came while this one was typed is shown. */
function cellNow(
  { row, column, cell }: EditedCell,
  rows: readonly GridRow[],
  columns: readonly GridColumn[],
): GridCell {
  const at = columns.findIndex(({ id }) => id === column.id);
  return rows.find(({ id }) => id === row.id)?.cells[at] ?? cell;
}

/** More cells than this come a screenful first. */
const cellsAtOnce = 2000;
const rowsAtFirst = 20;

/** Whether all rows are drawn: of a very large table only once the first screenful stands. */
function useWholeTable(cells: number): boolean {
  const [whole, setWhole] = useState(cells <= cellsAtOnce);
  useEffect(() => {
    startTransition(() => {
      setWhole(true);
    });
  }, []);
  return whole;
}
