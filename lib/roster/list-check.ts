import type { RosterEntry } from './plan-roster';
import type { TableRow } from './read-table';
import { cleanName, faultOfName, nameFaultText, sameNameKey, type NameFault } from './student-name';

export type RowProblem =
  | NameFault
  | { code: 'repeats-name'; rowNumber: number }
  | { code: 'repeats-id'; rowNumber: number };

/** `typed` is the text as it came, for a field to show; `name` is what would be stored. */
export type ListRow = {
  rowNumber: number;
  typed: string;
  name: string;
  sourcedId: string | null;
  problem: RowProblem | null;
};

export type ColumnMapping = {
  hasHeader: boolean;
  nameColumn: number;
  /** A second column, put after the first with a space between; null to take one column alone. */
  joinColumn: number | null;
  /** What stays the same from list to list; null where there is no such column. */
  idColumn: number | null;
};

/** The rows of a table under a mapping. `corrections` holds what the teacher typed over a row. */
export function rowsOfTable(
  rows: readonly TableRow[],
  mapping: ColumnMapping,
  corrections: ReadonlyMap<number, string> = new Map(),
): ListRow[] {
  const body = mapping.hasHeader ? rows.slice(1) : rows;
  return checkRows(
    body.map((row) => ({
      rowNumber: row.rowNumber,
      typed:
        corrections.get(row.rowNumber) ??
        [mapping.nameColumn, mapping.joinColumn]
          .map((index) => (index === null ? '' : (row.cells[index] ?? '')))
          .join(' ')
          .trim(),
      sourcedId: mapping.idColumn === null ? null : row.cells[mapping.idColumn] || null,
    })),
  );
}

/** The same for names typed one to a line. Blank lines separate; they are no mistake. */
export function rowsOfTyped(text: string): ListRow[] {
  return checkRows(
    text
      .split(/\r\n|\n|\r/)
      .map((typed, index) => ({ rowNumber: index + 1, typed, sourcedId: null }))
      .filter((row) => row.typed.trim() !== ''),
  );
}

function checkRows(
  rows: readonly { rowNumber: number; typed: string; sourcedId: string | null }[],
): ListRow[] {
  const names = new Map<string, number>();
  const ids = new Map<string, number>();
  return rows.map(({ rowNumber, typed, sourcedId }) => {
    const name = cleanName(typed);
    const key = sameNameKey(name);
    const sameName = names.get(key);
    const sameId = sourcedId === null ? undefined : ids.get(sourcedId);
    if (name !== '' && sameName === undefined) names.set(key, rowNumber);
    if (sourcedId !== null && sameId === undefined) ids.set(sourcedId, rowNumber);
    const problem: RowProblem | null =
      faultOfName(name) ??
      (sameId !== undefined
        ? { code: 'repeats-id', rowNumber: sameId }
        : // An id of one's own tells two of the same name apart.
          sameName !== undefined && sourcedId === null
          ? { code: 'repeats-name', rowNumber: sameName }
          : null);
    return { rowNumber, typed, name, sourcedId, problem };
  });
}

/** What is wrong and what to do, for the row it stands beside. */
export function rowProblemText(problem: RowProblem): string {
  switch (problem.code) {
    case 'repeats-name':
      return `The same name as row ${String(problem.rowNumber)}. Add an initial or a number.`;
    case 'repeats-id':
      return `The same id as row ${String(problem.rowNumber)}. Put the id right in the list, or take no id column.`;
    default:
      return nameFaultText(problem);
  }
}

/** What would be imported: the rows without a problem. */
export const entriesOf = (rows: readonly ListRow[]): RosterEntry[] =>
  rows
    .filter((row) => row.problem === null)
    .map(({ rowNumber, sourcedId, name }) => ({ row: rowNumber, sourcedId, name }));

/** A row, or a run of them, that is not imported: where it stands, what stands there, and why not. */
export type LeftOutRow = { rowNumber: number; lastRowNumber: number; typed: string; why: string };

/** Every row that is left out, in the order of the list; empty ones beside each other are told together. */
export function leftOutOf(
  rows: readonly ListRow[],
  emptyRows: readonly number[] = [],
): LeftOutRow[] {
  const runs: LeftOutRow[] = [];
  for (const rowNumber of emptyRows) {
    const run = runs.at(-1);
    if (run !== undefined && run.lastRowNumber === rowNumber - 1) run.lastRowNumber = rowNumber;
    else runs.push({ rowNumber, lastRowNumber: rowNumber, typed: '', why: 'Nothing stands here.' });
  }
  const faulty = rows.flatMap(({ rowNumber, typed, problem }) =>
    problem === null
      ? []
      : [{ rowNumber, lastRowNumber: rowNumber, typed, why: rowProblemText(problem) }],
  );
  return [...runs, ...faulty].toSorted((one, other) => one.rowNumber - other.rowNumber);
}
