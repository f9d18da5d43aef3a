import type { RosterList } from '@/lib/data/roster-import-input';
import { entriesOf, rowsOfTable, rowsOfTyped } from '@/lib/roster/list-check';
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
} {
  if (way === 'zip') {
    const chosen = zip?.classes.find((one) => one.sourcedId === zip.chosenId);
    if (zip === null || chosen === undefined) return { source: '', list: null };
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
    };
  }
  return way === 'columns'
    ? {
        source: table?.source ?? '',
        list: table && plain(entriesOf(rowsOfTable(table.rows, table.mapping, table.corrections))),
      }
    : { source: 'Your list', list: plain(entriesOf(rowsOfTyped(typed))) };
}

const plain = (entries: RosterEntry[]): RosterList | null =>
  entries.length === 0
    ? null
    : { completeness: 'some', classSourcedId: null, keepNames: false, entries, gone: [] };
