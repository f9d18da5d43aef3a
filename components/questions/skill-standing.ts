import { daysAway } from '@/components/ui/days-away';
import type { Skill } from '@/lib/course/skills';
import type { Mastery } from '@/lib/mastery/mastery';

/** Where a student stands in a skill, as the practice page tells it. */
export type SkillStanding = Pick<Mastery, 'state' | 'inARow'> & {
  skill: Skill;
  /** When the next review is: "tomorrow", "in 7 days"; null before mastery and after the last. */
  review: string | null;
};

/** `timeZone` is the class's, an IANA name: its calendar counts the days. */
export function skillStanding(
  skill: Skill,
  mastery: Mastery,
  { timeZone, now }: { timeZone: string; now: Date },
): SkillStanding {
  const { state, inARow, nextReviewAt } = mastery;
  const review = nextReviewAt === null ? null : daysAway(nextReviewAt, timeZone, now);
  return { skill, state, inARow, review };
}
