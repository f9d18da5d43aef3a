import { course, lessonOfSkill, type LessonSlug } from '@/lib/course/lessons';
import type { StudentAssignment, StudentPart } from '@/lib/data/attempts';
import { skillsOfLab } from '@/lib/mastery/lab-skills';

/** What helps with a part: the lessons that teach what its lab asks. */
function lessonsOn({ lab, templates }: Pick<StudentPart, 'lab' | 'templates'>): LessonSlug[] {
  if (lab === 'lesson-questions')
    return course.flatMap(({ slug }) => (templates.includes(slug) ? [slug] : []));
  // The rehearsal draws on all of them; the last one tells how the evening goes.
  if (lab === 'dress-rehearsal') return [lessonOfSkill('safety').slug];
  return skillsOfLab[lab].map((skill) => lessonOfSkill(skill).slug);
}

/**
 * The lessons that the teacher set beside an assignment; where none was, those on what it asks, in the
 * order of the course. `set`: whether the teacher named them.
 */
export function lessonsToRead({ lessons, parts }: Pick<StudentAssignment, 'lessons' | 'parts'>): {
  set: boolean;
  lessons: readonly LessonSlug[];
} {
  if (lessons.length > 0) return { set: true, lessons };
  const helpful = new Set(parts.flatMap(lessonsOn));
  return {
    set: false,
    lessons: course.flatMap(({ slug }) => (helpful.has(slug) ? [slug] : [])),
  };
}
