import type { Mastery } from '@/lib/mastery/mastery';

export type SkillState = Mastery['state'];

/** In the order in which a skill goes through them. */
export const skillStates: readonly SkillState[] = [
  'not-started',
  'practising',
  'mastered',
  'review-due',
  'kept',
];

/** The states as student and teacher read them. Words first: colour is never alone. */
export const skillStateText: Readonly<Record<SkillState, { word: string; meaning: string }>> = {
  'not-started': { word: 'not started', meaning: 'nothing has been done yet' },
  practising: {
    word: 'practising',
    meaning: 'something was done; the row of three is not full yet',
  },
  mastered: {
    word: 'mastered',
    meaning: 'three passed in a row, each of another kind; asked again after 2, 7 and 21 days',
  },
  'review-due': {
    word: 'review due',
    meaning: 'mastered, and it is time to show it once more; one pass does it',
  },
  kept: { word: 'kept', meaning: 'mastered, and all three reviews passed' },
};

/** Mastery is not taken back: a review that is due says when to ask again. */
export const isMastered = ({ masteredAt }: Pick<Mastery, 'masteredAt'>): boolean =>
  masteredAt !== null;
