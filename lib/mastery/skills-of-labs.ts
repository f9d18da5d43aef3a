import { skills, type Skill } from '../course/skills';
import type { Lab } from '../variants/labs';
import { skillsOfLab } from './lab-skills';

/**
 * The skills that must be signed off at the real telescope where an assignment of these labs asks for
 * it: all of them for the dress rehearsal, none for questions.
 */
export function skillsOfLabs(labs: readonly Lab[]): Skill[] {
  const asked = new Set(
    labs.flatMap((lab): readonly Skill[] => {
      if (lab === 'dress-rehearsal') return skills;
      return lab === 'lesson-questions' ? [] : skillsOfLab[lab];
    }),
  );
  return skills.filter((skill) => asked.has(skill));
}
