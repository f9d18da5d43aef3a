import { expect, test } from 'vitest';
import { skills } from '../course/skills';
import { skillsOfLabs } from './skills-of-labs';

test('each skill once, in the order of an evening', () => {
  expect(skillsOfLabs(['alignment-run', 'put-it-together', 'alignment-run'])).toEqual([
    'kit',
    'assemble',
    'align',
  ]);
});

test('the rehearsal asks for all of them, questions for none', () => {
  expect(skillsOfLabs(['dress-rehearsal', 'level'])).toEqual(skills);
  expect(skillsOfLabs(['lesson-questions'])).toEqual([]);
});
