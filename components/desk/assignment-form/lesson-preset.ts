import { course, type LessonSlug } from '@/lib/course/lessons';
import { labOfSkill } from '@/lib/mastery/lab-skills';
import type { Lab } from '@/lib/variants/labs';
import { newPart, type PartDraft } from './part-draft';

/** The lab where a lesson's skill is practised. */
function labOfLesson(slug: LessonSlug): Lab | null {
  const lesson = course.find((one) => one.slug === slug);
  return lesson === undefined ? null : labOfSkill[lesson.skill];
}

/**
 * A lesson's worth of work at one choice: the lesson to read, its lab, and questions on it. The two marked
 * parts count the same; our judgement.
 */
export function lessonPreset(
  slug: LessonSlug,
  title: string,
  before: readonly PartDraft[],
): { title: string; lessons: readonly LessonSlug[]; parts: readonly PartDraft[] } {
  const lab = labOfLesson(slug);
  const bench = lab === null ? [] : [newPart(lab, [slug], before)];
  const questions = newPart('lesson-questions', [slug], [...before, ...bench]);
  return { title, lessons: [slug], parts: [...bench, questions] };
}
