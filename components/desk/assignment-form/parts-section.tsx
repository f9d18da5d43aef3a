'use client';

import { useState } from 'react';
import { labText } from '@/components/grading/template-text';
import { lessonName } from '@/lib/wording/lesson-name';
import { Button } from '@/components/ui/button';
import { Field, FieldError } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import { course } from '@/lib/course/lessons';
import { mostParts } from '@/lib/data/assignment-input';
import { labOptions, labs, type Lab } from '@/lib/variants/labs';
import type { AssignmentDraft } from './assignment-draft';
import { moved, newPart, withLab, type PartDraft } from './part-draft';
import { PartEditor } from './part-editor';
import { partDraftName } from './part-words';
import { Section, type SectionProps } from './section';

/** A change that can be taken back, with what to say of it. */
type ChangeWithUndo = (patch: Partial<AssignmentDraft>, said: string) => void;

/** What is marked, part by part, in the order in which students meet it. */
export function PartsSection({
  draft,
  change,
  changeWithUndo,
  problemAt,
  titles,
}: SectionProps<AssignmentDraft> & {
  changeWithUndo: ChangeWithUndo;
  /** What a new assignment of each lab is called until the teacher says otherwise. */
  titles: Readonly<Record<Lab, string>>;
}) {
  const { parts, lessons } = draft;
  const [opened, setOpened] = useState<string | null>(null);
  const problem = problemAt('parts');

  const set = (index: number, part: PartDraft) =>
    change({ parts: parts.map((one, at) => (at === index ? part : one)) });

  function chooseLab(index: number, lab: Lab): void {
    const part = parts[index];
    if (part === undefined || part.lab === lab) return;
    const named = parts.length === 1 && draft.title === titles[part.lab];
    change({
      parts: parts.map((one, at) => (at === index ? withLab(one, lab, lessons) : one)),
      ...(named ? { title: titles[lab] } : {}),
    });
  }

  function add(choice: string): void {
    const lesson = course.find(({ slug }) => questionsChoice(slug) === choice);
    const lab = labs.find((name) => name === choice);
    const part =
      lesson === undefined
        ? newPart(lab ?? 'pick-the-pair', lessons, parts)
        : newPart('lesson-questions', [lesson.slug], parts);
    setOpened(part.key);
    change({ parts: [...parts, part] });
  }

  return (
    <Section
      id="section-parts"
      title="What is marked"
      lead="One lab, or several parts in an order: labs, questions on lessons, the rehearsal. They share place, evening and rules; each has its own attempts."
    >
      <div id="parts" tabIndex={-1} className="space-y-4">
        {problem === null ? null : <FieldError id="parts-error">{problem}</FieldError>}
        <ol className="space-y-4">
          {parts.map((part, index) => (
            <li key={part.key}>
              <PartEditor
                part={part}
                index={index}
                count={parts.length}
                startsOpen={opened === part.key}
                problemAt={problemAt}
                onLab={(lab) => chooseLab(index, lab)}
                onChange={(next) => set(index, next)}
                onMove={(by) =>
                  changeWithUndo(
                    { parts: moved(parts, index, by) },
                    `${partDraftName(part)} is now part ${String(index + 1 + by)}.`,
                  )
                }
                onRemove={() =>
                  changeWithUndo(
                    { parts: parts.filter((one) => one !== part) },
                    `${partDraftName(part)} is taken away.`,
                  )
                }
              />
            </li>
          ))}
        </ol>
        {parts.length < mostParts ? <AddPart onAdd={add} /> : null}
      </div>
    </Section>
  );
}

/** Some lessons are called like their labs. */
const questionsChoice = (slug: string): string => `questions ${slug}`;
const openLabs = labs.filter((lab) => labOptions[lab].ofAllKinds !== true);

function AddPart({ onAdd }: { onAdd: (choice: string) => void }) {
  const [choice, setChoice] = useState<string>(openLabs[0] ?? '');
  return (
    <div className="flex flex-wrap items-end gap-3">
      <Field label="Another part">
        {(control) => (
          <Select {...control} value={choice} onChange={(event) => setChoice(event.target.value)}>
            <optgroup label="Labs and the rehearsal">
              {openLabs.map((lab) => (
                <option key={lab} value={lab}>
                  {labText[lab].name}
                </option>
              ))}
            </optgroup>
            <optgroup label="Questions on a lesson">
              {course.map(({ slug }) => (
                <option key={slug} value={questionsChoice(slug)}>
                  Questions: {lessonName(slug)}
                </option>
              ))}
            </optgroup>
          </Select>
        )}
      </Field>
      <Button onClick={() => onAdd(choice)}>Add the part</Button>
    </div>
  );
}
