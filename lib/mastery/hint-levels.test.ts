import { expect, test } from 'vitest';
import { hintLevels } from './hint-levels';
import type { Mastery } from './mastery';

type State = Mastery['state'];

test.each<[State, number]>([
  ['not-started', 3],
  ['practising', 3],
  ['mastered', 1],
  ['review-due', 1],
  ['kept', 0],
])('hints fade with mastery: %s leaves %i', (state, left) => {
  expect(hintLevels('level', () => state)).toBe(left);
});

test('of two skills the one that is less mastered decides', () => {
  const stateOf = (skill: string): State => (skill === 'kit' ? 'kept' : 'practising');
  expect(hintLevels('put-it-together', stateOf)).toBe(3);
});

test('a whole evening keeps its hints while any skill is still practised', () => {
  const stateOf = (skill: string): State => (skill === 'align' ? 'practising' : 'kept');
  expect(hintLevels('dress-rehearsal', stateOf)).toBe(3);
  expect(hintLevels('dress-rehearsal', () => 'mastered')).toBe(1);
});
