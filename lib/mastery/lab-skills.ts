import type { Skill } from '../course/skills';
import type { Lab } from '../variants/labs';

/** Where a skill is practised on the bench or the sky; safety in all of it, in order. */
export const labOfSkill: Readonly<Record<Skill, Lab>> = {
  kit: 'put-it-together',
  assemble: 'put-it-together',
  level: 'level',
  balance: 'balance',
  field: 'field',
  finder: 'finder',
  power: 'power',
  'clock-and-place': 'clock-and-place',
  'choose-stars': 'pick-the-pair',
  align: 'alignment-run',
  diagnose: 'what-went-wrong',
  safety: 'dress-rehearsal',
};

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

/** Where something can happen that a gate forbids; in the others nothing can hurt anybody. */
export const labsWithGates: readonly Lab[] = [
  'put-it-together',
  'level',
  'balance',
  'power',
  'finder',
  'alignment-run',
];
