import fc from 'fast-check';
import { expect, test } from 'vitest';
import { stepInGrid } from './grid-steps';

// The keys of the data grid pattern, ARIA Authoring Practices Guide (W3C).
const size = { rows: 30, columns: 6 };
const from = { row: 12, column: 3 };
const step = (key: string, ctrl = false, place = from) => stepInGrid({ key, ctrl }, place, size);

test.each([
  ['ArrowLeft', false, { row: 12, column: 2 }],
  ['ArrowRight', false, { row: 12, column: 4 }],
  ['ArrowUp', false, { row: 11, column: 3 }],
  ['ArrowDown', false, { row: 13, column: 3 }],
  ['PageUp', false, { row: 2, column: 3 }],
  ['PageDown', false, { row: 22, column: 3 }],
  ['Home', false, { row: 12, column: 0 }],
  ['End', false, { row: 12, column: 5 }],
  ['Home', true, { row: 0, column: 0 }],
  ['End', true, { row: 29, column: 5 }],
])('%s (with Ctrl: %s) leads to %o', (key, ctrl, place) => {
  expect(step(key, ctrl)).toEqual(place);
});

test.each(['Enter', 'Tab', 'a', '7', 'Escape'])('%s is left alone', (key) => {
  expect(step(key)).toBeNull();
});

test('no key leads out of the grid', () => {
  const keys = [
    'ArrowLeft',
    'ArrowRight',
    'ArrowUp',
    'ArrowDown',
    'PageUp',
    'PageDown',
    'Home',
    'End',
  ];
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.constantFrom(...keys), fc.boolean())),
      fc.integer({ min: 1, max: 40 }),
      fc.integer({ min: 1, max: 40 }),
      (presses, rows, columns) => {
        let place = { row: 0, column: 0 };
        for (const [key, ctrl] of presses)
          place = stepInGrid({ key, ctrl }, place, { rows, columns }) ?? place;
        expect(place.row).toBeLessThan(rows);
        expect(place.column).toBeLessThan(columns);
        expect(Math.min(place.row, place.column)).toBeGreaterThanOrEqual(0);
      },
    ),
  );
});
