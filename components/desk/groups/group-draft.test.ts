import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  aloneIn,
  dealt,
  draftOf,
  everybodyIn,
  moved,
  nextGroupName,
  sameDraft,
} from './group-draft';

const student = (number: number) => ({
  studentId: `s${number}`,
  displayName: `Student ${number}`,
  cardNumber: number,
});
const group = (name: string, numbers: readonly number[]) => ({
  groupId: name,
  name,
  kitId: null,
  extensionCount: 0,
  students: numbers.map(student),
});
const school = {
  groups: [group('A', [1, 4]), group('B', [2])],
  withoutGroup: [student(3), student(5)],
  version: 'v',
};
const draft = draftOf(school);
const everybody = everybodyIn(school);
const numbersIn = (groups: typeof draft) => groups.map(({ studentIds }) => studentIds.join(' '));

test('everybody stands in order of their cards', () => {
  expect(everybody.map(({ cardNumber }) => cardNumber)).toEqual([1, 2, 3, 4, 5]);
});

test('who is put into a group leaves the one before', () => {
  expect(numbersIn(moved(draft, ['s1', 's3'], 'B'))).toEqual(['s4', 's2 s1 s3']);
  expect(numbersIn(moved(draft, ['s1'], null))).toEqual(['s4', 's2']);
});

test('nobody is ever in two groups, however they are moved about', () => {
  const move = fc.record({
    who: fc.subarray(everybody.map(({ studentId }) => studentId)),
    to: fc.constantFrom('A', 'B', null),
  });
  fc.assert(
    fc.property(fc.array(move, { maxLength: 12 }), (moves) => {
      const after = moves.reduce((groups, { who, to }) => moved(groups, who, to), draft);
      const placed = after.flatMap(({ studentIds }) => studentIds);
      expect(new Set(placed).size).toBe(placed.length);
      expect(placed.length + aloneIn(after, everybody).length).toBe(everybody.length);
    }),
  );
});

test('the rest are dealt to the smallest; everybody anew forgets who was where', () => {
  expect(numbersIn(dealt(draft, everybody, 'the-rest'))).toEqual(['s1 s4 s5', 's2 s3']);
  expect(numbersIn(dealt(draft, everybody, 'everybody'))).toEqual(['s1 s3 s5', 's2 s4']);
});

test('a new group takes the first free number', () => {
  const [first] = draft;
  if (first === undefined) throw new Error('there are two');
  expect(nextGroupName(draft)).toBe('Group 1');
  expect(nextGroupName([{ ...first, name: 'Group 1' }])).toBe('Group 2');
});

test('the order within a group is no difference, a name is', () => {
  expect(sameDraft(draft, moved(moved(draft, ['s1'], null), ['s1'], 'A'))).toBe(true);
  expect(
    sameDraft(
      draft,
      draft.map((entry) => ({ ...entry, name: `${entry.name}!` })),
    ),
  ).toBe(false);
});
