import type { KeyboardEvent } from 'react';
import { TableFrame } from '@/components/ui/table-frame';
import { skills, skillTitles } from '@/lib/course/skills';
import { gateLetter, gatesOfSkill, gateText } from '@/lib/mastery/sign-off-gates';
import type { SignOffGroup, SignOffStudent } from '@/lib/mastery/sign-off-sheet';
import { readTypedLevel } from '@/lib/mastery/typed-level';
import { typedName } from './typed-notes';
import type { Typing } from './use-typing';

const cellId = (row: number, column: number): string => `typed-${String(row)}-${String(column)}`;

/** Moves by the arrows and Enter, as in a spreadsheet; below the last skill stands the next student. */
function move(event: KeyboardEvent<HTMLInputElement>, row: number, column: number): void {
  const { selectionStart, selectionEnd, value } = event.currentTarget;
  const all = selectionStart === 0 && selectionEnd === value.length;
  const last = skills.length - 1;
  const down: readonly [number, number] = row === last ? [0, column + 1] : [row + 1, column];
  const up: readonly [number, number] = row === 0 ? [last, column - 1] : [row - 1, column];
  const places: Partial<Record<string, readonly [number, number]>> = {
    ArrowUp: up,
    ArrowDown: down,
    Enter: event.shiftKey ? up : down,
  };
  if (all || selectionStart === value.length) places['ArrowRight'] = [row, column + 1];
  if (all || selectionEnd === 0) places['ArrowLeft'] = [row, column - 1];
  const place = places[event.key];
  if (place === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
  const next = document.getElementById(cellId(...place));
  event.preventDefault();
  if (next instanceof HTMLInputElement) {
    next.focus();
    next.select();
  }
}

/** Rows and columns as on the paper form, a level a cell. */
export function TypingCells({
  students,
  groups,
  typing,
}: {
  students: readonly SignOffStudent[];
  groups: readonly SignOffGroup[];
  typing: Typing;
}) {
  const groupOf = ({ groupId }: SignOffStudent) => groups.find(({ id }) => id === groupId)?.name;
  return (
    <TableFrame caption="Levels from the paper form" captionHidden stickyFirstColumn tall>
      <thead>
        <tr>
          <th scope="col">Skill and its gates</th>
          {students.map((student) => (
            <th key={student.id} scope="col" className="px-1! text-center!">
              {groups.length === 0 ? null : (
                <span className="block text-xs font-normal text-soft">{groupOf(student)}</span>
              )}
              {student.displayName}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {skills.map((skill, row) => (
          <tr key={skill}>
            <th scope="row" className="w-32 min-w-32 sm:min-w-40">
              {skillTitles[skill]}
              <span className="block text-xs font-normal text-soft">
                {gatesOfSkill[skill]
                  .map((gate, index) => `${gateLetter(index)} ${gateText[gate].failed}`)
                  .join(' · ')}
              </span>
            </th>
            {students.map((student, column) => {
              const name = typedName(student, skill);
              const text = typing.typed[name] ?? '';
              return (
                <td key={student.id} className="px-1! align-middle!">
                  <input
                    id={cellId(row, column)}
                    aria-label={`${student.displayName}, ${skillTitles[skill]}`}
                    aria-invalid={readTypedLevel(text, skill).kind === 'unclear' || undefined}
                    value={text}
                    maxLength={12}
                    autoComplete="off"
                    onKeyDown={(event) => move(event, row, column)}
                    onChange={({ target }) => typing.type(name, target.value)}
                    // Clear of the names beside and above, and of the bar with the undo below.
                    className="min-h-11 w-14 scroll-ms-44 scroll-me-4 scroll-mt-16 scroll-mb-24 rounded-md border border-strong bg-panel px-1 text-center aria-invalid:border-2 aria-invalid:border-danger"
                  />
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}
