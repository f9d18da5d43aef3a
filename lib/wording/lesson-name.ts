import { capitalised } from '@/lib/wording/capital';
import type { LessonSlug } from '@/lib/course/lessons';

/** A lesson as it is called in lists, where its page's own title is not at hand: "Level enough". */
export const lessonName = (slug: LessonSlug): string => capitalised(slug.replaceAll('-', ' '));
