'use client';

import { useEffect, useRef, type FocusEvent, type KeyboardEvent } from 'react';
import { stepInGrid } from './grid-steps';

/** What takes the focus in a cell: its link where it has one. */
const focusableIn = (cell: Element): HTMLElement | null =>
  cell.querySelector<HTMLElement>('a') ?? (cell instanceof HTMLElement ? cell : null);

const placeOf = (target: EventTarget, table: HTMLTableElement) => {
  const cell = target instanceof Element ? target.closest('td, th') : null;
  const row = cell?.closest('tr');
  if (!(cell instanceof HTMLTableCellElement) || row === null || row === undefined) return null;
  return { row: [...table.rows].indexOf(row), column: cell.cellIndex };
};

/**
 * Arrow keys, Home, End and Page keys in a table that is a grid, with one tab stop that stays where the
 * reader was. It moves the tab stop in the page itself: thousands of cells are not drawn anew for it.
 */
export function useGridKeys(onDigit: (cell: HTMLElement, digit: string) => void) {
  const table = useRef<HTMLTableElement>(null);
  const stop = useRef<HTMLElement | null>(null);

  const settle = (to: HTMLElement | null) => {
    if (to === null) return;
    if (stop.current !== to) stop.current?.setAttribute('tabindex', '-1');
    to.setAttribute('tabindex', '0');
    stop.current = to;
  };

  // After every drawing: a row that was filtered out takes the tab stop along.
  useEffect(() => {
    if (stop.current?.isConnected === true) return;
    const first = table.current?.rows[1]?.cells[0];
    settle(first === undefined ? null : focusableIn(first));
  });

  return {
    table,
    onFocus: (event: FocusEvent<HTMLTableElement>) => {
      if (event.target !== event.currentTarget) settle(event.target);
    },
    onKeyDown: (event: KeyboardEvent<HTMLTableElement>) => {
      const { key, ctrlKey, metaKey, altKey } = event;
      const grid = event.currentTarget;
      const from = placeOf(event.target, grid);
      if (from === null || altKey || metaKey) return;
      if (/^[0-9]$/.test(key) && !ctrlKey && event.target instanceof HTMLElement) {
        onDigit(event.target, key);
        return;
      }
      const rows = grid.rows.length;
      const columns = grid.rows[from.row]?.cells.length ?? 0;
      const to = stepInGrid({ key, ctrl: ctrlKey }, from, { rows, columns });
      const cell = to === null ? undefined : grid.rows[to.row]?.cells[to.column];
      if (cell === undefined) return;
      event.preventDefault();
      const next = focusableIn(cell);
      settle(next);
      next?.focus();
    },
  };
}
