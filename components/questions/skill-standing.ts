import type { Skill } from '@/lib/course/skills';
import type { Mastery } from '@/lib/mastery/mastery';

/** Where a student stands in a skill, as the practice page tells it. */
export type SkillStanding = Pick<Mastery, 'state' | 'inARow'> & {
  skill: Skill;
  /** Whole days until the next review, 0 when it is due; null before mastery and after the last. */
  reviewInDays: number | null;
};

const dayMs = 24 * 60 * 60 * 1000;

export function skillStanding(skill: Skill, mastery: Mastery, now: Date): SkillStanding {
  const { state, inARow, nextReviewAt } = mastery;
  const reviewInDays =
    nextReviewAt === null
      ? null
      : Math.max(0, Math.ceil((nextReviewAt.getTime() - now.getTime()) / dayMs));
  return { skill, state, inARow, reviewInDays };
}

/** "tomorrow", "in 7 days". */
export const inDays = (days: number): string =>
  days <= 0 ? 'today' : days === 1 ? 'tomorrow' : `in ${String(days)} days`;
