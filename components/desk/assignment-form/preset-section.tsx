'use client';

import { Field } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import type { AssignmentDraft } from './assignment-draft';
import { lessonPreset } from './lesson-preset';
import type { LessonChoice } from './lessons-section';

/** A whole lesson's work at one choice; what stood there can be had back. */
export function PresetSection({
  draft,
  lessons,
  changeWithUndo,
}: {
  draft: AssignmentDraft;
  lessons: readonly LessonChoice[];
  changeWithUndo: (patch: Partial<AssignmentDraft>, said: string) => void;
}) {
  return (
    <Field
      label="Start from"
      hint="A 45-minute lesson: the text to read, its lab, and eight questions on it. Change whatever you like afterwards."
    >
      {(control) => (
        <Select
          {...control}
          className="max-w-lg"
          value=""
          onChange={({ target: { value } }) => {
            const lesson = lessons.find(({ slug }) => slug === value);
            if (lesson === undefined) return;
            changeWithUndo(
              lessonPreset(lesson.slug, lesson.title, draft.parts),
              presetSaid(lesson),
            );
          }}
        >
          <option value="">What stands below</option>
          {lessons.map(({ slug, title }) => (
            <option key={slug} value={slug}>
              A 45-minute lesson on: {title}
            </option>
          ))}
        </Select>
      )}
    </Field>
  );
}

/** The lesson's own minutes, so that nobody plans by a round number alone. */
const presetSaid = ({ title, minutes }: LessonChoice): string =>
  `“${title}” is set: the lesson, its lab and questions. The lesson itself counts on about ${String(minutes.learn)} minutes of reading and ${String(minutes.practise)} of practice.`;
