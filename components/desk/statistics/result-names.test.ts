import { expect, test } from 'vitest';
import { criterionTitle, gateTitle } from './result-names';

test('a gate is named in its own lab’s words, and of a rehearsal with its stage', () => {
  expect(gateTitle('tipped-over')).toBe('the stand tipped over');
  expect(gateTitle('let-go-loose')).toBe('the hand left a tube that was not secured');
  expect(gateTitle('power/mains-outdoors')).toBe('Power: a mains adapter outdoors');
  expect(gateTitle('alignment-run/sun')).toBe('Align on two stars: too close to the Sun');
  expect(gateTitle('pack-up/open-clamp')).toBe('Pack up: packed up dangerously');
});

test('a criterion that has no name any more stands as it is', () => {
  expect(criterionTitle('balance', 'reserve')).toBe('Something to spare');
  expect(criterionTitle('balance', 'of-old')).toBe('of-old');
});
