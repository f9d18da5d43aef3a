import type { KitChoice, SiteChoice } from '@/components/desk/assignment-form/assignment-draft';
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

/** The one lesson that goes with "Pick the pair". */
export const pairLesson = { slug: 'choosing-alignment-stars', title: 'Choosing alignment stars' };
