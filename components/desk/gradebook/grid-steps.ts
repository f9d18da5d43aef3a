/** A place in a grid: rows and columns count from 0, heads included. */
export type GridPlace = { row: number; column: number };

/** How many rows Page Up and Page Down go. */
const pageRows = 10;

/**
 * Where a key leads from a place of a grid, by the pattern that screen readers know for grids (ARIA
 * Authoring Practices, data grid); null for a key that means nothing there. It never leaves the grid.
 */
export function stepInGrid(
  { key, ctrl }: { key: string; ctrl: boolean },
  from: GridPlace,
  size: { rows: number; columns: number },
): GridPlace | null {
  const to = target(key, ctrl, from, size);
  return to === null
    ? null
    : { row: within(to.row, size.rows), column: within(to.column, size.columns) };
}

const within = (index: number, count: number): number => Math.max(0, Math.min(count - 1, index));

function target(
  key: string,
  ctrl: boolean,
  { row, column }: GridPlace,
  { rows, columns }: { rows: number; columns: number },
): GridPlace | null {
  switch (key) {
    case 'ArrowLeft':
      return { row, column: column - 1 };
    case 'ArrowRight':
      return { row, column: column + 1 };
    case 'ArrowUp':
      return { row: row - 1, column };
    case 'ArrowDown':
      return { row: row + 1, column };
    case 'PageUp':
      return { row: row - pageRows, column };
    case 'PageDown':
      return { row: row + pageRows, column };
    case 'Home':
      return { row: ctrl ? 0 : row, column: 0 };
    case 'End':
      return { row: ctrl ? rows - 1 : row, column: columns - 1 };
    default:
      return null;
  }
}
