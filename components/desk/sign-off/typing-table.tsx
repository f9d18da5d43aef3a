'use client';

import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { StatusLine } from '@/components/ui/status-line';
import { TextInput } from '@/components/ui/text-input';
import type { Skill } from '@/lib/course/skills';
import type { OutgoingNote } from '@/lib/mastery/sign-off-note';
import type { Ledger, SeenNote } from '@/lib/mastery/sign-off-queue';
import type { SignOffGroup, SignOffStudent } from '@/lib/mastery/sign-off-sheet';
import { ConditionFields } from './condition-fields';
import { eveningText } from './cell-view';
import type { EveningSettings } from './kept-on-device';
import { inPaperOrder, notesFromTyped, typedCells } from './typed-notes';
import { TypingCells } from './typing-cells';
import { elsewhereText, newsText, notesText, unclearText, wrongDate } from './typing-words';
import type { Typing } from './use-typing';

/** For what was noted on paper: the form's layout, a digit a cell, all saved together. */
export function TypingTable({
  students: inGroup,
  everybody,
  groups,
  timeZone,
  settings,
  typing,
  ledger,
  telescopeOf,
  notesOf,
  onSave,
}: {
  /** Of the group that is chosen. */
  students: readonly SignOffStudent[];
  everybody: readonly SignOffStudent[];
  groups: readonly SignOffGroup[];
  timeZone: string;
  settings: EveningSettings;
  typing: Typing;
  ledger: Ledger;
  telescopeOf: (student: SignOffStudent) => string;
  notesOf: (studentId: string, skill: Skill) => readonly SeenNote[];
  onSave: (notes: readonly OutgoingNote[]) => void;
}) {
  const { typed, evening } = typing;
  // Of the paper's evening, which need not be tonight's.
  const conditions = evening.conditions ?? settings.conditions;
  const { light } = conditions;
  const wrong = wrongDate(evening.date, { now: new Date(), timeZone, light });
  const students = inPaperOrder(inGroup, groups);
  const cells = typedCells(typed, students);
  const filled = cells.filter(({ read }) => read.kind === 'level').length;
  const unclear = cells.filter(({ read }) => read.kind === 'unclear');
  const news = newsText(typing.news, ledger, everybody);
  const date = filled > 0 && wrong !== null ? 'Look at the date of the evening.' : '';
  const said = unclear.length > 0 ? [unclearText(unclear)] : [news, date];
  const elsewhere = elsewhereText(typed, { shown: students, everybody, groups });

  const save = () => {
    const notes = notesFromTyped(cells, {
      date: evening.date,
      conditions,
      telescopeOf,
      notesOf,
    });
    typing.save(notes);
    onSave(notes);
  };

  return (
    <details className="no-print rounded-md border border-line bg-panel">
      <summary className="px-3 py-2.5 font-semibold">Type in from the paper form</summary>
      <div className="space-y-3 p-3" data-unsaved={typing.unsaved ? '' : undefined}>
        <div className="grid gap-3 sm:grid-cols-3">
          <Field id="typed-evening" label="Date of the evening" error={wrong}>
            {(control) => (
              <TextInput
                {...control}
                type="date"
                value={evening.date}
                onChange={({ target }) => typing.setEvening({ ...evening, date: target.value })}
              />
            )}
          </Field>
          <ConditionFields
            id="typed"
            conditions={conditions}
            onChange={(changed) => typing.setEvening({ ...evening, conditions: changed })}
          />
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
            {wrong === null ? `of ${eveningText(evening.date)}` : ''}
          </Button>
          <StatusLine>{[...said, elsewhere].filter((part) => part !== '').join(' ')}</StatusLine>
        </div>
      </div>
    </details>
  );
}
