import { expect, it } from 'vitest';
import { nextTitle } from './next-title';

it('numbers from the second on', () => {
  expect(nextTitle([])).toBe('Pick the pair');
  expect(nextTitle(['Pick the pair for tonight'])).toBe('Pick the pair 2');
});

it('passes over a title that the class has already', () => {
  expect(nextTitle(['Pick the pair 2', 'Pick the pair 3'])).toBe('Pick the pair 4');
});
