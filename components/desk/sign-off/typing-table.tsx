'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { StatusLine } from '@/components/ui/status-line';
import { TextInput } from '@/components/ui/text-input';
import { skillTitles, type Skill } from '@/lib/course/skills';
import { eveningOf } from '@/lib/mastery/evening';
import type { OutgoingNote } from '@/lib/mastery/sign-off-note';
import type { Ledger, SeenNote } from '@/lib/mastery/sign-off-queue';
import type { SignOffGroup, SignOffStudent } from '@/lib/mastery/sign-off-sheet';
import { ConditionFields } from './condition-fields';
import { eveningText } from './cell-view';
import type { EveningSettings } from './kept-on-device';
import { inPaperOrder, notesFromTyped, typedCells } from './typed-notes';
import { TypingCells } from './typing-cells';
import type { Typing } from './use-typing';

const notesText = (count: number): string => (count === 1 ? '1 note' : `${String(count)} notes`);

/** For what was noted on paper: the form's layout, a digit a cell, all saved together. */
export function TypingTable({
  students: inGroup,
  groups,
  timeZone,
  settings,
  typing,
  ledger,
  telescopeOf,
  notesOf,
  onSave,
}: {
  students: readonly SignOffStudent[];
  groups: readonly SignOffGroup[];
  timeZone: string;
  settings: EveningSettings;
  typing: Typing;
  ledger: Ledger;
  telescopeOf: (student: SignOffStudent) => string;
  notesOf: (studentId: string, skill: Skill) => readonly SeenNote[];
  onSave: (notes: readonly OutgoingNote[]) => void;
}) {
  const [date, setDate] = useState<string | null>(null);
  // Of the paper's evening, which need not be tonight's.
  const [own, setOwn] = useState<EveningSettings['conditions'] | null>(null);
  const conditions = own ?? settings.conditions;
  const evening = date ?? settings.evening;
  const wrong =
    date === null ? null : wrongDate(date, eveningOf(new Date(), timeZone, conditions.light));
  const students = inPaperOrder(inGroup, groups);
  const cells = typedCells(typing.typed, students);
  const filled = cells.filter(({ read }) => read.kind === 'level').length;
  const unclear = cells.filter(({ read }) => read.kind === 'unclear');

  const save = () => {
    const notes = notesFromTyped(cells, { date: evening, conditions, telescopeOf, notesOf });
    typing.save(notes);
    onSave(notes);
  };

  return (
    <details className="no-print rounded-md border border-line bg-panel">
      <summary className="flex min-h-11 items-center px-3 font-semibold">
        Type in from the paper form
      </summary>
      <div className="space-y-3 p-3" data-unsaved={typing.unsaved ? '' : undefined}>
        <div className="grid gap-3 sm:grid-cols-3">
          <Field id="typed-evening" label="Date of the evening" error={wrong}>
            {(control) => (
              <TextInput
                {...control}
                type="date"
                value={evening}
                onChange={({ target }) => setDate(target.value)}
              />
            )}
          </Field>
          <ConditionFields id="typed" conditions={conditions} onChange={setOwn} />
        </div>
        <p className="max-w-measure text-sm text-soft">
          A level from 1 to 4 in each cell; after it the letter of a gate that failed, and a stroke
          for each prompt, as on the form: 3, 3b, 3//, 2a///. Right and left go from student to
          student; Enter goes down, and from the last skill to the next student. Leave empty what
          was not seen. Other evenings: save, then change the date.
        </p>
        <TypingCells students={students} groups={groups} typing={typing} />
        <div className="flex flex-wrap items-center gap-3">
          <Button
            variant="primary"
            className="min-h-11"
            disabled={filled === 0 || unclear.length > 0 || wrong !== null}
            onClick={save}
          >
            Save {filled === 0 ? 'notes' : notesText(filled)}{' '}
            {wrong === null ? `of ${eveningText(evening)}` : ''}
          </Button>
          <StatusLine>
            {unclear.length > 0
              ? `Unclear: ${unclear
                  .slice(0, 3)
                  .map(({ student, skill }) => `${student.displayName}, ${skillTitles[skill]}`)
                  .join(
                    '; ',
                  )}${unclear.length > 3 ? ` and ${String(unclear.length - 3)} more` : ''}. A level from 1 to 4, then letters of its gates, then strokes.`
              : savedText(typing.savedKeys, ledger)}
          </StatusLine>
        </div>
      </div>
    </details>
  );
}

function wrongDate(date: string, latest: string): string | null {
  if (date === '') return 'Give the date that stands on the paper.';
  return date > latest ? 'This evening is still to come.' : null;
}

/** Where the notes of the last saving are. */
function savedText(keys: readonly string[], { waiting }: Ledger): string {
  if (keys.length === 0) return '';
  const here = waiting.filter(({ item }) => keys.includes(item.key));
  const asking = here.filter(({ state }) => state.kind !== 'queued').length;
  const queued = here.length - asking;
  return [
    `${notesText(keys.length)} taken over`,
    queued === 0 ? '' : `${String(queued)} kept on this device, not sent yet`,
    asking === 0 ? '' : `${String(asking)} at the top of the page, for your word`,
    here.length === 0 ? 'all sent' : '',
  ]
    .filter((part) => part !== '')
    .join('; ')
    .concat('.');
}
