import { expect, test } from 'vitest';
import { attemptsInRules, givenText } from './given-text';

const given = {
  parts: ['Pick the pair'],
  lessons: [],
  className: 'Year 8',
  studentCount: 12,
  due: '6 Dec 2026, 19:30 (Europe/London)',
  attempts: attemptsInRules(2, 'best'),
};

test('what is given is said in one breath: what, to whom, when due, how often', () => {
  expect(givenText(given)).toBe(
    'Pick the pair, for all 12 students of Year 8. Due 6 Dec 2026, 19:30 (Europe/London); two attempts, the best counts.',
  );
});

test('several parts and lessons are told in a line, and that attempts are counted for each part', () => {
  expect(
    givenText({
      ...given,
      parts: ['Level', 'Balance', 'Questions: Level enough'],
      lessons: ['Level enough', 'Tube on, balanced'],
    }),
  ).toBe(
    'Level, balance, questions: Level enough and the lessons “Level enough” and “Tube on, balanced” to read, for all 12 students of Year 8. Due 6 Dec 2026, 19:30 (Europe/London); two attempts for each part, the best counts.',
  );
});

test('what is missing is said too', () => {
  expect(
    givenText({
      ...given,
      parts: [],
      studentCount: 0,
      due: null,
      attempts: attemptsInRules(null, 'average'),
    }),
  ).toBe(
    'Nothing yet, for Year 8, which has no students yet. No due time; any number of attempts, the average counts.',
  );
  expect(givenText({ ...given, studentCount: 1, attempts: attemptsInRules(1, 'last') })).toContain(
    'for the one student of Year 8. Due 6 Dec 2026, 19:30 (Europe/London); one attempt.',
  );
});
