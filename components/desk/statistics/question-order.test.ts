import { expect, test } from 'vitest';
import type { QuestionStatistics } from '@/lib/data/class-statistics-questions';
import { inOrder } from './question-order';

const question = (family: string, people: number, difficulty: number): QuestionStatistics => ({
  family,
  title: family,
  lesson: 'level-enough',
  people,
  difficulty,
  right: 0,
  partly: 0,
  wrong: 0,
  itemRest: null,
  itemRestPeople: 0,
  upperLower: null,
  note: null,
  kinds: [],
});
const questions = [question('easy', 20, 1), question('few', 2, 0), question('many', 20, 0.5)];
const order = (by: Parameters<typeof inOrder>[1]) =>
  inOrder(questions, by).map(({ family }) => family);

test('the hardest question comes first, or the one that troubles most students', () => {
  expect(order('course')).toEqual(['easy', 'few', 'many']);
  expect(order('hard')).toEqual(['few', 'many', 'easy']);
  expect(order('trouble')).toEqual(['many', 'few', 'easy']);
});
