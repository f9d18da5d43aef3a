import { expect, test } from 'vitest';
import { ideaBehind } from './misconceptions-in-labs';

const slip = (code: string, change = {}) => ({
  code,
  why: null,
  stage: null,
  first: null,
  ...change,
});

test('a slip gives away the idea behind it, with the lesson that answers it', () => {
  expect(ideaBehind('level', slip('wrong-way'))).toEqual({
    misconception: 'bubble-shows-low-side',
    lesson: 'level-enough',
  });
  expect(ideaBehind('level', slip('more-moves'))).toBeNull();
});

test('a wrong figure gives an idea away only where a known mistake leads to it', () => {
  const off = (why: string | null) => ideaBehind('power', slip('run-time-off', { why }));
  expect(off('cold-forgotten')?.misconception).toBe('cold-does-not-matter');
  expect(off(null)).toBeNull();
});

test('a stage of the rehearsal is judged as its own lab', () => {
  const change = { stage: 'clock-and-place', first: 'zone-sign' };
  expect(ideaBehind('dress-rehearsal', slip('bench', change))).toEqual({
    misconception: 'zone-the-wrong-way',
    lesson: 'clock-and-place',
  });
});
