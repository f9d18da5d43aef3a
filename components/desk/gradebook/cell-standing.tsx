import { skillTitles } from '@/lib/course/skills';
import type { GradebookAssignment, GradebookCell } from '@/lib/data/gradebook';
import { markText } from '@/components/grading/mark-text';
import { zonedTimeText } from '@/components/grading/zoned-time';
import { GradebookStateMark } from '@/components/grading/gradebook/gradebook-state-mark';
import { cellNotes } from './grid-rows';

/** The mark that counts, the state in words, the due time, and what is behind them in short. */
export function CellStanding({
  cell,
  assignment,
  timeZone,
}: {
  cell: GradebookCell;
  assignment: GradebookAssignment;
  timeZone: string;
}) {
  const due = cell.extendedDueAt ?? assignment.dueAt;
  const notes = cellNotes({ ...cell, extendedDueAt: null }, timeZone);
  return (
    <div className="space-y-1">
      <p className="flex flex-wrap items-baseline gap-x-4 gap-y-1">
        {cell.mark === null ? null : (
          <span className="font-figures text-2xl font-semibold">
            {markText(cell.mark)}
            <span className="text-sm font-normal text-soft">
              {' '}
              of 100{cell.complete ? '' : ' so far'}, pass {markText(assignment.passMark)}
            </span>
          </span>
        )}
        <GradebookStateMark state={cell.state} />
        <span className="text-sm text-soft">
          {due === null
            ? 'no due time'
            : `due ${zonedTimeText(due, timeZone)}${cell.extendedDueAt === null ? '' : ' (own due time)'}`}
        </span>
      </p>
      {notes === '' ? null : <p className="text-sm text-soft">{notes}</p>}
      {cell.state === 'needs-sign-off' ? (
        <p className="text-sm">
          To be signed off at the telescope:{' '}
          {cell.toSignOff.map((skill) => skillTitles[skill]).join(' · ')}.
        </p>
      ) : null}
    </div>
  );
}
