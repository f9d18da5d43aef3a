'use client';

import { useState, type KeyboardEvent } from 'react';
import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { StatusLine } from '@/components/ui/status-line';
import { TableFrame } from '@/components/ui/table-frame';
import { TextInput } from '@/components/ui/text-input';
import { skills, skillTitles, type Skill } from '@/lib/course/skills';
import { gateLetter, gatesOfSkill, gateText } from '@/lib/mastery/sign-off-gates';
import type { OutgoingNote } from '@/lib/mastery/sign-off-note';
import type { SeenNote } from '@/lib/mastery/sign-off-queue';
import type { SignOffStudent } from '@/lib/mastery/sign-off-sheet';
import { readTypedLevel } from '@/lib/mastery/typed-level';
import { cloudText } from './evening-choice';
import type { EveningSettings } from './kept-on-device';
import { newKey } from './new-key';

const cellId = (skillIndex: number, studentIndex: number): string =>
  `typed-${String(skillIndex)}-${String(studentIndex)}`;

/** Moves by the arrows and Enter, as in a spreadsheet. */
function move(event: KeyboardEvent<HTMLInputElement>, row: number, column: number): void {
  const atEnd = event.currentTarget.selectionStart === event.currentTarget.value.length;
  const atStart = event.currentTarget.selectionEnd === 0;
  const steps: Partial<Record<string, readonly [number, number]>> = {
    ArrowUp: [-1, 0],
    ArrowDown: [1, 0],
    Enter: [1, 0],
    ...(atEnd ? { ArrowRight: [0, 1] as const } : {}),
    ...(atStart ? { ArrowLeft: [0, -1] as const } : {}),
  };
  const step = steps[event.key];
  if (step === undefined) return;
  const next = document.getElementById(cellId(row + step[0], column + step[1]));
  event.preventDefault();
  if (next instanceof HTMLInputElement) {
    next.focus();
    next.select();
  }
}

/** For what was noted on paper: the form's layout, a digit a cell, all saved together. */
export function TypingTable({
  students,
  settings,
  telescopeOf,
  notesOf,
  onSave,
}: {
  students: readonly SignOffStudent[];
  settings: EveningSettings;
  telescopeOf: (student: SignOffStudent) => string;
  notesOf: (studentId: string, skill: Skill) => readonly SeenNote[];
  onSave: (notes: readonly OutgoingNote[]) => void;
}) {
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({});
  const [date, setDate] = useState('');
  const [said, setSaid] = useState('');
  const { conditions, evening } = settings;
  const observedAt = date === '' ? evening : date;

  const cells = skills.flatMap((skill) =>
    students.map((student) => {
      const text = typed[`${student.id} ${skill}`] ?? '';
      return { skill, student, read: readTypedLevel(text, skill) };
    }),
  );
  const filled = cells.filter(({ read }) => read.kind === 'level').length;
  const unclear = cells.filter(({ read }) => read.kind === 'unclear').length;

  const save = () => {
    const notes = cells.flatMap(({ skill, student, read }): OutgoingNote[] => {
      if (read.kind !== 'level') return [];
      const earlier = notesOf(student.id, skill).filter(
        (note) => note.waiting && note.mine && note.evening === observedAt,
      );
      const keys = earlier.map(({ key }) => key);
      const { level, gates } = read;
      return [
        {
          kind: 'note',
          key: newKey(),
          studentId: student.id,
          skill,
          level,
          gates,
          prompts: 0,
          note: '',
          instrument: telescopeOf(student),
          conditions,
          observedAt,
          // Typed twice before it was sent; what is on the server already is asked about.
          over: keys.length === 0 ? null : { keys, how: 'replace' },
        },
      ];
    });
    onSave(notes);
    setTyped({});
    setSaid(`${String(notes.length)} ${notes.length === 1 ? 'note' : 'notes'} taken over.`);
  };

  return (
    <details className="no-print rounded-md border border-line bg-panel">
      <summary className="flex min-h-11 items-center px-3 font-semibold">
        Type in from the paper form
      </summary>
      <div className="space-y-3 p-3">
        <div className="flex flex-wrap items-end gap-4">
          <Field
            id="typed-evening"
            label="Date of the evening"
            hint={`${conditions.light}, ${cloudText[conditions.cloud]}: change it above if the paper says otherwise.`}
          >
            {(control) => (
              <TextInput
                {...control}
                type="date"
                value={observedAt}
                onChange={({ target }) => setDate(target.value)}
              />
            )}
          </Field>
        </div>
        <p className="max-w-measure text-sm text-soft">
          A level from 1 to 4 in each cell; after it the letter of a gate that failed, as on the
          form: 3b. Arrows and Enter move. Leave empty what was not seen.
        </p>
        <TableFrame caption="Levels from the paper form" captionHidden stickyFirstColumn tall>
          <thead>
            <tr>
              <th scope="col">Skill and its gates</th>
              {students.map(({ id, displayName }) => (
                <th key={id} scope="col" className="px-1! text-center!">
                  {displayName}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {skills.map((skill, row) => (
              <tr key={skill}>
                <th scope="row" className="min-w-40">
                  {skillTitles[skill]}
                  <span className="block text-xs font-normal text-soft">
                    {gatesOfSkill[skill]
                      .map((gate, index) => `${gateLetter(index)} ${gateText[gate].failed}`)
                      .join(' · ')}
                  </span>
                </th>
                {students.map((student, column) => {
                  const name = `${student.id} ${skill}`;
                  const text = typed[name] ?? '';
                  return (
                    <td key={student.id} className="px-1! align-middle!">
                      <input
                        id={cellId(row, column)}
                        aria-label={`${student.displayName}, ${skillTitles[skill]}`}
                        aria-invalid={readTypedLevel(text, skill).kind === 'unclear' || undefined}
                        value={text}
                        maxLength={9}
                        autoComplete="off"
                        onKeyDown={(event) => move(event, row, column)}
                        onChange={({ target }) => {
                          setTyped({ ...typed, [name]: target.value });
                          setSaid('');
                        }}
                        className="min-h-(--target-small) w-14 rounded-md border border-strong bg-panel px-1 text-center aria-invalid:border-2 aria-invalid:border-danger"
                      />
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </TableFrame>
        <div className="flex flex-wrap items-center gap-3">
          <Button variant="primary" disabled={filled === 0 || unclear > 0} onClick={save}>
            Save {filled === 0 ? '' : String(filled)} {filled === 1 ? 'note' : 'notes'}
          </Button>
          <StatusLine>
            {unclear > 0
              ? `${String(unclear)} ${unclear === 1 ? 'cell is' : 'cells are'} unclear: a level from 1 to 4, then letters of its gates.`
              : said}
          </StatusLine>
        </div>
      </div>
    </details>
  );
}
