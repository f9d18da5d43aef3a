import fc from 'fast-check';
import { expect, test } from 'vitest';
import { skills } from '../course/skills';
import { bySkill } from './by-skill';

const students = ['ann', 'ben', 'cy'] as const;
const pieces = fc.array(
  fc.record({
    studentId: fc.constantFrom(...students),
    skill: fc.constantFrom(...skills),
    number: fc.nat(),
  }),
);

// The standard library's filter says what belongs together, and in which order.
test('finds of each student and skill what a filter finds', () => {
  fc.assert(
    fc.property(pieces, (all) => {
      const find = bySkill(all);
      for (const studentId of students) {
        for (const skill of skills) {
          expect(find(studentId, skill)).toEqual(
            all.filter((one) => one.studentId === studentId && one.skill === skill),
          );
        }
      }
    }),
    { numRuns: 50 },
  );
});

test('looks at each piece once, however much is asked', () => {
  let looks = 0;
  const piece = {
    get studentId() {
      looks += 1;
      return 'ann';
    },
    skill: skills[0],
  };
  const find = bySkill([piece]);
  const after = looks;
  for (const skill of skills) find('ann', skill);
  expect(looks).toBe(after);
});
