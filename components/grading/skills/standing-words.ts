import { capitalised } from '@/lib/wording/capital';
import { neededInARow, reviewDays, type Mastery } from '@/lib/mastery/mastery';

const counts = ['none', 'one', 'two', 'three'] as const;
const count = (number: number): string => counts[number] ?? String(number);

/**
 * Where somebody stands in a skill, in a sentence or two. `day` writes a date as the reader's calendar
 * has it: "Friday 11 December, in 2 days".
 */
export function standingWords(standing: Mastery, day: (at: Date) => string): string {
  const { state, inARow, masteredAt, nextReviewAt, reviewsPassed } = standing;
  const since = masteredAt === null ? '' : `Mastered on ${day(masteredAt)}.`;
  switch (state) {
    case 'not-started':
      return 'Nothing done yet.';
    case 'practising':
      return inARow === 0
        ? `The last one was not passed, so the row begins anew: ${count(neededInARow)} to go.`
        : `${capitalised(count(inARow))} passed in a row; ${count(neededInARow - inARow)} more of another kind.`;
    case 'mastered':
      return nextReviewAt === null
        ? since
        : `${since} The ${reviewName(reviewsPassed)} is due on ${day(nextReviewAt)}.`;
    case 'review-due':
      return nextReviewAt === null
        ? since
        : `${since} The ${reviewName(reviewsPassed)} has been due since ${day(nextReviewAt)}. One pass does it.`;
    case 'kept':
      return `${since} All ${count(reviewDays.length)} reviews passed.`;
  }
}

const names = ['first review', 'second review', 'last review'] as const;
const reviewName = (passed: number): string => names[passed] ?? 'review';
