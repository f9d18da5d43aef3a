import type { KitChoice, SiteChoice } from '@/components/desk/assignment-form/assignment-draft';
import type { LessonChoice } from '@/components/desk/assignment-form/lessons-section';
import { listLessons } from '@/lib/content/lessons';
import { course } from '@/lib/course/lessons';
import { loadKits, loadSites } from '@/lib/content/sky-catalogue';

export const kitChoices = (): KitChoice[] =>
  loadKits().map(({ id, name, description, telescope, eyepieces, observingEyepieceId }) => ({
    id,
    name,
    description,
    telescope,
    eyepieces,
    observingEyepieceId,
  }));

export const siteChoices = (): SiteChoice[] =>
  loadSites().map(({ id, name, horizon }) => ({ id, name, horizon }));

/** The lessons that can be set, in the order of the course. */
export async function lessonChoices(): Promise<LessonChoice[]> {
  const lessons = await listLessons();
  return course.flatMap(({ slug }) => {
    const found = lessons.find((lesson) => lesson.slug === slug);
    if (found === undefined) return [];
    const { title, minutes } = found.frontMatter;
    return [{ slug, title, minutes: { learn: minutes.learn, practise: minutes.practise } }];
  });
}
