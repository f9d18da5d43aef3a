import { capitalised } from './capital';

/** A lesson as it is called in lists, where its page's own title is not at hand: "Level enough". */
export const lessonName = (slug: string): string => capitalised(slug.replaceAll('-', ' '));
