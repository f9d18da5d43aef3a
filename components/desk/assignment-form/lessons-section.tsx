'use client';

import { Checkbox } from '@/components/ui/checkbox';
import type { LessonSlug } from '@/lib/course/lessons';
import type { AssignmentDraft } from './assignment-draft';
import { withLesson } from './part-draft';
import { Section, type SectionProps } from './section';

/** The lessons that are to be read beside what is marked. */
export function LessonsSection({
  draft,
  change,
  lessons,
}: Pick<SectionProps<AssignmentDraft>, 'draft' | 'change'> & {
  lessons: readonly LessonChoice[];
}) {
  const count = draft.lessons.length;
  return (
    <Section
      id="section-lessons"
      title="To read"
      lead="Lessons that stand beside the task. Reading is not marked."
    >
      <details className="rounded-md border border-line bg-panel px-4 py-3">
        <summary className="font-semibold">
          Lessons{' '}
          <span className="font-normal text-soft">
            (
            {count === 0
              ? 'none'
              : lessons
                  .filter(({ slug }) => draft.lessons.includes(slug))
                  .map(({ title }) => title)
                  .join(' · ')}
            )
          </span>
        </summary>
        <fieldset className="mt-4 grid gap-x-6 gap-y-2 sm:grid-cols-2">
          <legend className="sr-only">Lessons to read</legend>
          {lessons.map(({ slug, title }) => (
            <Checkbox
              key={slug}
              label={title}
              checked={draft.lessons.includes(slug)}
              onChange={(event) =>
                change({ lessons: withLesson(draft.lessons, slug, event.target.checked) })
              }
            />
          ))}
        </fieldset>
      </details>
    </Section>
  );
}

/** A lesson as the form offers it; minutes as the lesson itself tells them. */
export type LessonChoice = {
  slug: LessonSlug;
  title: string;
  minutes: { learn: number; practise: number };
};
