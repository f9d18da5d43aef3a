import { expect, it } from 'vitest';
import { workWords } from './report-words';

const parts = 3;

it('says of work in parts which are missing, not that nothing was handed in', () => {
  expect(workWords({ state: 'missing', parts, notHandedIn: ['level', 'balance'] })).toBe(
    '1 of 3 parts handed in; not handed in: “Level” and “Balance”',
  );
  expect(workWords({ state: 'in-progress', parts, notHandedIn: ['level'] })).toBe(
    '2 of 3 parts handed in; still to come: “Level”',
  );
});

it('counts missing parts where naming them would fill the line', () => {
  expect(
    workWords({
      state: 'missing',
      parts: 5,
      notHandedIn: ['level', 'balance', 'power', 'finder'],
    }),
  ).toBe('1 of 5 parts handed in; not handed in: 4 parts');
});

it('says that work is not handed in where none of it is', () => {
  expect(workWords({ state: 'missing', parts: 1, notHandedIn: ['level'] })).toBe('not handed in');
  expect(workWords({ state: 'missing', parts, notHandedIn: ['level', 'balance', 'power'] })).toBe(
    'not handed in',
  );
});

it('leaves a state that a teacher has set as it is, whatever parts are missing', () => {
  expect(workWords({ state: 'complete', parts, notHandedIn: ['level'] })).toBe('passed');
  expect(workWords({ state: 'excused', parts, notHandedIn: ['level'] })).toBe('excused');
});
