import { expect, test } from 'vitest';
import type { Item } from '../items/item';
import { choicesOf, wrongAnswerOf } from './class-statistics-choices';

const item = (volts: string, same = 'It takes what it needs'): Item => ({
  family: 'f',
  template: 't',
  generatorVersion: 1,
  prompt: '?',
  explanation: '.',
  kind: 'choice',
  key: 'a',
  options: [
    { id: 'a', text: same, reason: '.' },
    { id: 'b', text: 'It bursts', reason: '.', misconception: 'rated-current-is-pushed' },
    { id: 'c', text: `It gets ${volts}`, reason: '.', misconception: 'series-hours-add' },
    { id: 'd', text: `It falls by ${volts}`, reason: '.' },
  ],
});
const answered = (volts: string, option: string) =>
  wrongAnswerOf('s', { item: item(volts), answer: { kind: 'choice', option } });

test('options that all were shown stand by their words, others by the idea behind them', () => {
  const wrong = [answered('3 V', 'b'), answered('4 V', 'c'), answered('5 V', 'd')];
  expect(choicesOf(wrong, 4)).toEqual([
    { text: 'wholly right', right: true, people: 4 },
    { text: 'It bursts', right: false, people: 1 },
    { text: 'against: Cells in a row add their volts, not their hours.', right: false, people: 1 },
    { text: 'another answer, other for each student', right: false, people: 1 },
  ]);
});

test('an answer tells the idea it gives away, and whose it is', () => {
  expect(answered('3 V', 'b')).toMatchObject({
    studentId: 's',
    misconceptions: ['rated-current-is-pushed'],
  });
});

test('what nobody chose has a row where several saw it, and none where one did', () => {
  const texts = (count: number) =>
    choicesOf(
      Array.from({ length: count }, () => answered('3 V', 'c')),
      0,
    ).map(({ text }) => text);
  expect(texts(2)).toContain('It falls by 3 V');
  expect(texts(1)).not.toContain('It falls by 3 V');
});
