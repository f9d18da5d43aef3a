import type { KitChoice, SiteChoice } from '@/components/desk/assignment-form/assignment-draft';
import { listLessons } from '@/lib/content/lessons';
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

/** The lessons that a teacher can offer beside a task, in the order of the course. */
export const lessonChoices = async (): Promise<{ slug: string; title: string }[]> =>
  (await listLessons()).map(({ slug, frontMatter }) => ({ slug, title: frontMatter.title }));
