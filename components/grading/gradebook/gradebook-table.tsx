import Link from 'next/link';
import { TableFrame } from '@/components/ui/table-frame';
import { zonedTimeText } from '../zoned-time';
import type { Gradebook, GradebookCell } from '@/lib/data/gradebook';
import { routes } from '@/lib/routes';
import { GradebookStateMark } from './gradebook-state-mark';
import { markText } from '../mark-text';

/** Students by assignments: state in words and the mark that counts, each a way to what is behind it. */
export function GradebookTable({
  gradebook,
  timeZone,
}: {
  gradebook: Gradebook;
  timeZone: string;
}) {
  const cells = new Map(
    gradebook.cells.map((cell) => [cellKey(cell.studentId, cell.assignmentId), cell]),
  );
  return (
    <TableFrame caption="Gradebook: students by assignments" captionHidden stickyFirstColumn>
      <thead>
        <tr>
          <th scope="col">Student</th>
          {gradebook.assignments.map((assignment) => (
            <th key={assignment.id} scope="col" className="min-w-36">
              <Link className="link" href={routes.teacher.assignment(assignment.id)}>
                {assignment.title}
              </Link>
              <span className="block text-xs font-normal text-soft">
                {assignment.dueAt === null
                  ? 'no due time'
                  : `due ${zonedTimeText(assignment.dueAt, timeZone)}`}{' '}
                · pass {markText(assignment.passMark)}
              </span>
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {gradebook.students.map((student) => (
          <tr key={student.id}>
            <th scope="row" className="min-w-32">
              <span className="me-1.5 inline-block min-w-5 text-end text-xs font-normal text-soft">
                <span className="sr-only">Card </span>
                {student.cardNumber}
              </span>
              <Link className="link" href={routes.teacher.student(student.id)}>
                {student.displayName}
              </Link>
            </th>
            {gradebook.assignments.map((assignment) => (
              <td key={assignment.id}>
                <Cell
                  cell={cells.get(cellKey(student.id, assignment.id))}
                  title={assignment.title}
                  name={student.displayName}
                />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </TableFrame>
  );
}

const cellKey = (studentId: string, assignmentId: string): string => `${studentId} ${assignmentId}`;

function Cell({
  cell,
  title,
  name,
}: {
  cell: GradebookCell | undefined;
  title: string;
  name: string;
}) {
  if (cell === undefined) return <span className="text-soft">not set</span>;
  const { mark, state } = cell;
  const notes = [
    cell.overridden ? 'set by hand' : '',
    cell.gateFailed ? 'safety gate failed' : '',
    cell.latePenalty !== null && cell.latePenalty > 0
      ? `late, −${markText(cell.latePenalty * 100)} %`
      : '',
    cell.attempts > 1 ? `${cell.attempts} attempts` : '',
  ].filter((note) => note !== '');
  const shown = (
    <>
      {mark === null ? null : (
        <span className="me-2 text-base font-semibold">{markText(mark)}</span>
      )}
      <GradebookStateMark state={state} />
    </>
  );
  return (
    <>
      <Link
        href={
          cell.countedAttemptId === null
            ? routes.teacher.student(cell.studentId)
            : routes.teacher.attempt(cell.countedAttemptId)
        }
        className="-mx-1 inline-flex min-h-(--target-small) items-center px-1 underline decoration-dotted underline-offset-4 hover:decoration-solid"
      >
        <span className="sr-only">
          {name}, {title}:{' '}
        </span>
        {shown}
      </Link>
      {notes.length === 0 ? null : (
        <span className="ms-2 inline-block text-xs whitespace-nowrap text-soft">
          {notes.join(' · ')}
        </span>
      )}
    </>
  );
}
