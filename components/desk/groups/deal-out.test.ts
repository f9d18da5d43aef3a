import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dealOut } from './deal-out';

const students = (count: number) => Array.from({ length: count }, (_, index) => `s${index}`);
const empty = (count: number) =>
  Array.from({ length: count }, (_, index) => ({ name: `g${index}`, studentIds: [] as string[] }));
const sizes = (groups: readonly { studentIds: readonly string[] }[]) =>
  groups.map(({ studentIds }) => studentIds.length);

test('28 students at six telescopes stand five, five, five, five, four and four', () => {
  expect(sizes(dealOut(empty(6), students(28)))).toEqual([5, 5, 5, 5, 4, 4]);
});

test('they are dealt in turn, as cards are', () => {
  expect(dealOut(empty(2), students(5)).map(({ studentIds }) => studentIds)).toEqual([
    ['s0', 's2', 's4'],
    ['s1', 's3'],
  ]);
});

test('whoever has a group stays, and the smallest is filled first', () => {
  const groups = [
    { name: 'a', studentIds: ['x', 'y', 'z'] },
    { name: 'b', studentIds: ['w'] },
  ];
  expect(dealOut(groups, ['p', 'q', 'r']).map(({ studentIds }) => studentIds)).toEqual([
    ['x', 'y', 'z', 'r'],
    ['w', 'p', 'q'],
  ]);
});

test('with no group nobody is dealt', () => {
  expect(dealOut([], students(3))).toEqual([]);
});

test('nobody is lost or doubled, sizes differ by one at most, and it comes out the same again', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 0, max: 60 }), (count, many) => {
      const dealt = dealOut(empty(count), students(many));
      expect(dealt.flatMap(({ studentIds }) => studentIds).toSorted()).toEqual(
        students(many).toSorted(),
      );
      expect(Math.max(...sizes(dealt)) - Math.min(...sizes(dealt))).toBeLessThanOrEqual(1);
      expect(dealOut(empty(count), students(many))).toEqual(dealt);
    }),
  );
});
