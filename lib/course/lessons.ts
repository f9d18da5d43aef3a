import type { Skill } from './skills';

/**
 * The course in its order: a lesson's slug (its folder in content/lessons), the skill that it is about,
 * and the lab where the skill is practised.
 */
export const course = [
  { slug: 'what-is-in-the-case', skill: 'kit' },
  { slug: 'standing-it-up', skill: 'assemble' },
  { slug: 'level-enough', skill: 'level' },
  { slug: 'tube-on-and-balanced', skill: 'balance' },
  { slug: 'eyepieces-and-views', skill: 'field' },
  { slug: 'finder-by-day', skill: 'finder' },
  { slug: 'power-without-smoke', skill: 'power' },
  { slug: 'clock-and-place', skill: 'clock-and-place' },
  { slug: 'choosing-alignment-stars', skill: 'choose-stars' },
  { slug: 'align-on-two-stars', skill: 'align' },
  { slug: 'what-went-wrong', skill: 'diagnose' },
  { slug: 'the-night', skill: 'safety' },
] as const satisfies readonly { slug: string; skill: Skill }[];

export type LessonSlug = (typeof course)[number]['slug'];

/** Where a skill is taught. */
export function lessonOfSkill(skill: Skill): (typeof course)[number] {
  const found = course.find((one) => one.skill === skill);
  if (found === undefined) throw new Error(`no lesson is about ${skill}`);
  return found;
}
