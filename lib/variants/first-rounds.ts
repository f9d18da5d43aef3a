import { benchTemplates } from './bench/bench-labs';
import { faultTemplates } from './fault-variant';
import { course } from '../course/lessons';
import type { Lab, Template } from './labs';

/**
 * Kinds of task that a newcomer's first round is of: the usual case under an open sky. Whoever meets a
 * lab for the first time under an overcast with no star to choose learns nothing of it.
 */
export const firstRoundTemplates: Readonly<Record<Lab, readonly Template[]>> = {
  ...benchTemplates,
  'pick-the-pair': ['free-pair', 'partner', 'mount-proposes'],
  'alignment-run': ['mount-proposes', 'first-given'],
  'what-went-wrong': faultTemplates,
  'lesson-questions': course.map(({ slug }) => slug),
};
