import type { Metadata } from 'next';
import { LessonCard } from '@/components/lesson/lesson-card';
import { EmptyState } from '@/components/ui/empty-state';
import { PageHeader } from '@/components/ui/page-header';
import { listLessons } from '@/lib/content/lessons';

export const metadata: Metadata = {
  title: 'Lessons',
  description: 'Short lessons on setting up and aligning a computerised telescope.',
};

export default async function LessonsPage() {
  const lessons = await listLessons();
  return (
    <>
      <PageHeader
        title="Lessons"
        lead="Each takes less than half an hour, with questions that tell you why. No account needed, and nothing is kept."
      />
      {lessons.length === 0 ? (
        <EmptyState title="There are no lessons here yet">
          <p>Lessons are folders in content/lessons. Put one there and load this page again.</p>
        </EmptyState>
      ) : (
        <ul className="grid gap-4 md:grid-cols-2">
          {lessons.map(({ slug, frontMatter }) => (
            <li key={slug}>
              <LessonCard slug={slug} lesson={frontMatter} />
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
