import type { LessonFrontMatter } from './lesson-front-matter';

export type GlossaryEntry = {
  term: string;
  /** As the first lesson that has the word gives it. */
  definition: string;
  /** Every lesson that has the word, in the order of the course. */
  lessons: readonly { slug: string; title: string }[];
};

type WordedLesson = {
  slug: string;
  frontMatter: Pick<LessonFrontMatter, 'title' | 'vocabulary'>;
};

/** All words of all lessons, in alphabetical order; a word is told once. Lessons in the order of the course. */
export function glossaryOf(lessons: readonly WordedLesson[]): GlossaryEntry[] {
  const entries = new Map<string, GlossaryEntry>();
  for (const { slug, frontMatter } of lessons) {
    for (const { term, definition } of frontMatter.vocabulary) {
      const key = term.toLowerCase();
      const known = entries.get(key) ?? { term, definition, lessons: [] };
      entries.set(key, {
        ...known,
        lessons: [...known.lessons, { slug, title: frontMatter.title }],
      });
    }
  }
  return [...entries.values()].sort((a, b) => a.term.localeCompare(b.term, 'en'));
}

/** The same under their first letters. */
export function byFirstLetter(
  entries: readonly GlossaryEntry[],
): { letter: string; entries: GlossaryEntry[] }[] {
  const groups = new Map<string, GlossaryEntry[]>();
  for (const entry of entries) {
    const letter = entry.term.charAt(0).toUpperCase();
    groups.set(letter, [...(groups.get(letter) ?? []), entry]);
  }
  return [...groups].map(([letter, group]) => ({ letter, entries: group }));
}
