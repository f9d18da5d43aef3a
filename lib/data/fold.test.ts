import { expect, test } from 'vitest';
import { fold } from './fold';

test.each([
  ['São Paulo', 'sao paulo'],
  ['Ürümqi', 'urumqi'],
  ['Saint-Étienne', 'saint etienne'],
  ['Xi’an', 'xian'],
  ['Łódź', 'lodz'],
  ['Ærøskøbing', 'aeroskobing'],
  ['  St. Andrews ', 'st andrews'],
  ['İzmir', 'izmir'],
  ['Київ', 'киів'],
])('%s folds to "%s"', (name, folded) => {
  expect(fold(name)).toBe(folded);
});
