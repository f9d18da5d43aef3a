import type { RosterList } from '@/lib/data/roster-import-input';
import {
  entriesOf,
  leftOutOf,
  rowsOfTable,
  rowsOfTyped,
  type LeftOutRow,
} from '@/lib/roster/list-check';
import { shownNames } from '@/lib/roster/one-roster/shown-names';
import type { RosterEntry } from '@/lib/roster/plan-roster';
import type { OpenZip } from './one-roster-way';
import type { OpenTable } from './table-way';

/** What stands in each of the three ways, and which is open. */
export type Ways = {
  way: string;
  typed: string;
  table: OpenTable | null;
  zip: OpenZip | null;
};

/** The list to preview, of the way that is open; null while it holds nobody. */
export function listOf({ way, typed, table, zip }: Ways): {
  source: string;
  list: RosterList | null;
  /** What stands in the list and is not taken. A zip is taken whole or not at all. */
  leftOut: readonly LeftOutRow[];
} {
  if (way === 'zip') {
    const chosen = zip?.classes.find((one) => one.sourcedId === zip.chosenId);
    if (zip === null || chosen === undefined) return { source: '', list: null, leftOut: [] };
    const names = shownNames(chosen.students, zip.form);
    return {
      source: `${zip.source}, ${chosen.title}`,
      list: {
        completeness: zip.mode === 'bulk' ? 'whole-class' : 'some',
        classSourcedId: chosen.sourcedId,
        keepNames: false,
        entries: chosen.students.map(({ row, sourcedId }, index) => ({
          row,
          sourcedId,
          name: names[index] ?? '',
        })),
        gone: [...chosen.gone],
      },
      leftOut: [],
    };
  }
  if (way === 'columns') {
    if (table === null) return { source: '', list: null, leftOut: [] };
    const rows = rowsOfTable(table.rows, table.mapping, table.corrections);
    return {
      source: table.source,
      list: plain(entriesOf(rows)),
      leftOut: leftOutOf(rows, table.emptyRows),
    };
  }
  const rows = rowsOfTyped(typed);
  return { source: 'Your list', list: plain(entriesOf(rows)), leftOut: leftOutOf(rows) };
}

const plain = (entries: RosterEntry[]): RosterList | null =>
  entries.length === 0
    ? null
    : { completeness: 'some', classSourcedId: null, keepNames: false, entries, gone: [] };
