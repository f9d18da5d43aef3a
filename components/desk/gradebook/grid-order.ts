import type { GradebookState } from '@/lib/grading/gradebook-state';
import type { GridRow } from './grid-rows';

export type GridView = {
  /** Only students with a cell in this state; empty: all. */
  state: GradebookState | '';
  /** Only the members of this group; empty: all. */
  group: string;
  sort: 'card' | 'name' | 'mean';
};

const byName = new Intl.Collator('en', { sensitivity: 'base', numeric: true });

const compare: Record<GridView['sort'], (a: GridRow, b: GridRow) => number> = {
  card: (a, b) => a.card - b.card,
  name: (a, b) => byName.compare(a.name, b.name) || a.card - b.card,
  /** Lowest first: whoever needs a look. Without a mean, last. */
  mean: (a, b) => (a.mean ?? Infinity) - (b.mean ?? Infinity) || a.card - b.card,
};

/** The rows that are asked for, in order; whoever has left stands last whatever the order. */
export function orderRows(rows: readonly GridRow[], { state, group, sort }: GridView): GridRow[] {
  return rows
    .filter(
      (row) =>
        (state === '' || row.cells.some((cell) => cell.state === state)) &&
        (group === '' || row.groups.includes(group)),
    )
    .sort((a, b) => Number(a.left) - Number(b.left) || compare[sort](a, b));
}
