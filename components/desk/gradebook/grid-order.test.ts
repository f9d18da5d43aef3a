import { expect, test } from 'vitest';
import { orderRows, type GridView } from './grid-order';
import type { GridRow } from './grid-rows';

const row = (card: number, name: string, more: Partial<GridRow> = {}): GridRow => ({
  id: name,
  card,
  name,
  left: false,
  groups: [],
  mean: null,
  cells: [],
  ...more,
});
const cell = (state: GridRow['cells'][number]['state']) => ({ state, mark: '', notes: '' });
const rows = [
  row(1, 'Wren', { mean: 90, groups: ['blue'], cells: [cell('complete'), cell('missing')] }),
  row(2, 'adder', { mean: 40, left: true, cells: [cell('missing')] }),
  row(3, 'Élan', { groups: ['blue'], cells: [cell('complete')] }),
  row(4, 'Dunlin', { mean: 55, cells: [cell('not-yet')] }),
];
const names = (view: Partial<GridView>) =>
  orderRows(rows, { state: '', group: '', sort: 'card', ...view }).map(({ name }) => name);

test('by card, with whoever has left last', () => {
  expect(names({})).toEqual(['Wren', 'Élan', 'Dunlin', 'adder']);
});

test('by name as a person sorts, accents and capitals aside', () => {
  expect(names({ sort: 'name' })).toEqual(['Dunlin', 'Élan', 'Wren', 'adder']);
});

test('by mean, lowest first and none at the end', () => {
  expect(names({ sort: 'mean' })).toEqual(['Dunlin', 'Wren', 'Élan', 'adder']);
});

test('only whoever has a cell in a state, or is in a group', () => {
  expect(names({ state: 'missing' })).toEqual(['Wren', 'adder']);
  expect(names({ group: 'blue' })).toEqual(['Wren', 'Élan']);
  expect(names({ state: 'missing', group: 'blue' })).toEqual(['Wren']);
});

test('the rows themselves are left in their order', () => {
  const before = rows.map(({ card }) => card);
  names({ sort: 'mean' });
  expect(rows.map(({ card }) => card)).toEqual(before);
});
