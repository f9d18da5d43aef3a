import { TextLink } from '@/components/ui/text-link';
import { routes } from '@/lib/routes';
import type { LessonFrontMatter } from '@/lib/content/lesson-front-matter';

type LessonCardProps = {
  slug: string;
  lesson: Pick<LessonFrontMatter, 'id' | 'title' | 'summary' | 'minutes' | 'level'>;
};

/** A lesson in the list of lessons: what it gives and how long it takes. */
export function LessonCard({ slug, lesson }: LessonCardProps) {
  const number = /\d+$/.exec(lesson.id)?.[0].replace(/^0/, '');
  return (
    <article className="h-full border border-t-2 border-line border-t-strong bg-panel p-4 sm:p-5">
      {number === undefined ? null : <p className="text-sm text-soft">Lesson {number}</p>}
      <h2 className="text-lg font-semibold">
        <TextLink href={routes.lessons.one(slug)}>{lesson.title}</TextLink>
      </h2>
      <p className="mt-1 max-w-measure">{lesson.summary}</p>
      <p className="mt-2 text-sm text-soft">
        About {lesson.minutes.learn + lesson.minutes.practise} minutes · {lesson.level}
      </p>
      <p className="mt-1 text-sm">
        <TextLink
          href={routes.lessons.practise(slug)}
          aria-label={`Practise its questions: ${lesson.title}`}
          className="inline-flex min-h-(--target-small) items-center"
        >
          Practise its questions
        </TextLink>
      </p>
    </article>
  );
}
