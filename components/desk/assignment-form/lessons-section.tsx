'use client';

import { Checkbox } from '@/components/ui/checkbox';
import type { LessonSlug } from '@/lib/course/lessons';
import type { AssignmentDraft } from './assignment-draft';
import { withLesson } from './part-draft';
import { Fold } from './fold';
import type { SectionProps } from './section';

/** The lessons that are to be read beside what is marked. */
export function LessonsSection({
  draft,
  change,
  lessons,
}: Pick<SectionProps<AssignmentDraft>, 'draft' | 'change'> & {
  lessons: readonly LessonChoice[];
}) {
  return (
    <Fold
      asSection
      id="section-lessons"
      title="To read"
      now={
        draft.lessons.length === 0
          ? 'no lesson'
          : lessons
              .filter(({ slug }) => draft.lessons.includes(slug))
              .map(({ title }) => title)
              .join(' · ')
      }
    >
      <p className="max-w-measure text-soft">
        Lessons that stand beside the task. Reading is not marked.
      </p>
      <fieldset className="grid gap-x-6 gap-y-2 sm:grid-cols-2">
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
    </Fold>
  );
}

/** A lesson as the form offers it; minutes as the lesson itself tells them. */
export type LessonChoice = {
  slug: LessonSlug;
  title: string;
  minutes: { learn: number; practise: number };
};
