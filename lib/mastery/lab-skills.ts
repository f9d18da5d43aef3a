import type { Skill } from '../course/skills';
import type { Lab } from '../variants/labs';

/**
 * The skills that a lab gives evidence of by its mark. Every gate tells of safety besides, and the dress
 * rehearsal says for each skill whether it was shown.
 */
export const skillsOfLab: Readonly<
  Record<Exclude<Lab, 'dress-rehearsal' | 'lesson-questions'>, readonly Skill[]>
> = {
  'put-it-together': ['kit', 'assemble'],
  level: ['level'],
  balance: ['balance'],
  power: ['power'],
  finder: ['finder'],
  field: ['field'],
  'clock-and-place': ['clock-and-place'],
  'pick-the-pair': ['choose-stars'],
  'alignment-run': ['align'],
  'what-went-wrong': ['diagnose'],
};
