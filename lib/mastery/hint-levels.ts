import { skills, type Skill } from '../course/skills';
import type { Lab } from '../variants/labs';
import { skillsOfLab } from './lab-skills';
import type { Mastery } from './mastery';

/** All of them: no lab offers more than three at once. */
const everyHint = 3;

const hintsAt: Readonly<Record<Mastery['state'], number>> = {
  'not-started': everyHint,
  practising: everyHint,
  mastered: 1,
  'review-due': 1,
  kept: 0,
};

/**
 * How many hints a practice of the lab offers: they fade with mastery of its skills, and the one least
 * mastered decides. The whole evening needs all of them.
 */
export function hintLevels(lab: Lab, stateOf: (skill: Skill) => Mastery['state']): number {
  const needed =
    lab === 'dress-rehearsal' || lab === 'lesson-questions' ? skills : skillsOfLab[lab];
  return Math.max(...needed.map((skill) => hintsAt[stateOf(skill)]));
}
