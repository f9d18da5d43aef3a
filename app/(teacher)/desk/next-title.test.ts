import { expect, it } from 'vitest';
import { nextTitles } from './next-title';

const pair = (title: string) => ({ labs: ['pick-the-pair' as const], title });

it('numbers from the second on, each lab for itself', () => {
  expect(nextTitles([])['pick-the-pair']).toBe('Pick the pair');
  const titles = nextTitles([pair('Pick the pair for tonight')]);
  expect(titles['pick-the-pair']).toBe('Pick the pair 2');
  expect(titles['alignment-run']).toBe('Alignment run');
});

it('passes over a title that the class has already', () => {
  const titles = nextTitles([pair('Pick the pair 2'), pair('Pick the pair 3')]);
  expect(titles['pick-the-pair']).toBe('Pick the pair 4');
});
