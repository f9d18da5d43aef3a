import type { Metadata } from 'next';
import { LessonCard } from '@/components/lesson/lesson-card';
import { EmptyState } from '@/components/ui/empty-state';
import { LinkButton } from '@/components/ui/link-button';
import { PageHeader } from '@/components/ui/page-header';
import { listLessons } from '@/lib/content/lessons';
import { routes } from '@/lib/routes';

export const metadata: Metadata = {
  title: 'Lessons',
  description: 'Short lessons on setting up and aligning a computerised telescope.',
};

export default async function LessonsPage() {
  const lessons = await listLessons();
  const minutes = lessons.reduce(
    (sum, { frontMatter }) => sum + frontMatter.minutes.learn + frontMatter.minutes.practise,
    0,
  );
  return (
    <>
      <PageHeader
        title="Lessons"
        lead="From the closed case to a night outside, in the order in which things are done. No account needed; a signed-in student’s answers are kept."
        actions={
          <LinkButton href={routes.glossary()} variant="quiet">
            Words of all lessons
          </LinkButton>
        }
      />
      {lessons.length === 0 ? (
        <EmptyState title="There are no lessons here yet">
          <p>Lessons are folders in content/lessons. Put one there and load this page again.</p>
        </EmptyState>
      ) : (
        <>
          <p className="mb-4 text-sm text-soft">
            {lessons.length} lessons, about {Math.round(minutes / 30) / 2} hours in all. Each can be
            read by itself.
          </p>
          <ol className="grid gap-4 md:grid-cols-2">
            {lessons.map(({ slug, frontMatter }) => (
              <li key={slug}>
                <LessonCard slug={slug} lesson={frontMatter} />
              </li>
            ))}
          </ol>
        </>
      )}
    </>
  );
}
