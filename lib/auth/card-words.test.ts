import { expect, test } from 'vitest';
import { cardWords } from './card-words';

test('three words give at least 31 bits: the list has 1,296 words or more', () => {
  expect(cardWords.length).toBeGreaterThanOrEqual(1296);
  expect(3 * Math.log2(cardWords.length)).toBeGreaterThan(31);
});

test('no word is there twice', () => {
  expect(new Set(cardWords).size).toBe(cardWords.length);
});

test('every word has four to seven plain small letters', () => {
  expect(cardWords.filter((word) => !/^[a-z]{4,7}$/.test(word))).toEqual([]);
});
