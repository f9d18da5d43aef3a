import { TextLink } from '@/components/ui/text-link';
import { routes } from '@/lib/routes';
import type { LessonFrontMatter } from '@/lib/content/lesson-front-matter';

/** The words of the lesson with their definitions: the same that a tap on a word shows. */
export function WordList({ vocabulary }: Pick<LessonFrontMatter, 'vocabulary'>) {
  return (
    <section aria-labelledby="words" className="my-8">
      <h2 id="words" className="text-lg font-semibold">
        Words
      </h2>
      <dl className="mt-2 space-y-1.5">
        {vocabulary.map(({ term, definition }) => (
          <div key={term} className="sm:grid sm:grid-cols-[10rem_1fr] sm:gap-x-4">
            <dt className="font-semibold">{term}</dt>
            <dd>{definition}</dd>
          </div>
        ))}
      </dl>
      <p className="no-print mt-3 text-sm">
        <TextLink href={routes.glossary()}>The words of all lessons</TextLink>
      </p>
    </section>
  );
}
