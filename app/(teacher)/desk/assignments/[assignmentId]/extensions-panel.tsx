import { ActionForm } from '@/components/desk/action-form';
import { ConfirmAction } from '@/components/desk/confirm-action';
import { zonedTimeText } from '@/components/grading/zoned-time';
import { Panel } from '@/components/ui/panel';
import { TableFrame } from '@/components/ui/table-frame';
import { TextLink } from '@/components/ui/text-link';
import type { AssignmentExtensions } from '@/lib/data/assignment-extensions';
import type { ExtraTime } from '@/lib/data/extra-time-input';
import { routes } from '@/lib/routes';
import { giveMoreTime, takeTimeBack } from './extension-actions';

/** Who has more time for this assignment, the form that gives it, and what students have in all of them. */
export function ExtensionsPanel({
  assignmentId,
  timeZone,
  extensions,
}: {
  assignmentId: string;
  timeZone: string;
  extensions: AssignmentExtensions;
}) {
  const { given, accommodations, students, groups } = extensions;
  /** As the form sends it: whom it is about, and when their own time was last changed, for the check. */
  const whoOf = (kind: 'group' | 'student', id: string): string => {
    const there = given.find((one) => one.kind === kind && one.id === id);
    return `${kind} ${id} ${there?.changedAt ?? 'none'}`;
  };
  return (
    <Panel title="More time" className="no-print">
      <div className="space-y-5">
        {given.length === 0 ? (
          <p className="text-soft">Nobody has a due time of their own for this assignment.</p>
        ) : (
          <TableFrame caption="Due times of their own">
            <thead>
              <tr>
                <th scope="col">Who</th>
                <th scope="col">Due</th>
                <th scope="col">Why</th>
                <th scope="col">
                  <span className="sr-only">Take back</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {given.map(({ kind, id, name, dueAt, note }) => (
                <tr key={`${kind} ${id}`}>
                  <th scope="row">{kind === 'group' ? `Group ${name}` : name}</th>
                  <td className="whitespace-nowrap">{zonedTimeText(dueAt, timeZone)}</td>
                  <td>{note}</td>
                  <td>
                    <ConfirmAction
                      action={takeTimeBack.bind(null, assignmentId, whoOf(kind, id))}
                      title={`Take the time of ${name} back?`}
                      description="The due time of the class holds again, or that of a group. What was handed in by then may count as late."
                      confirmLabel="Take it back"
                      busyLabel="Taking it back"
                    >
                      Take back…<span className="sr-only">: {name}</span>
                    </ConfirmAction>
                  </td>
                </tr>
              ))}
            </tbody>
          </TableFrame>
        )}
        {students.length === 0 ? null : (
          <details className="rounded-md border border-line px-4 py-3">
            <summary className="font-semibold">More time for a student or a group</summary>
            <div className="mt-4">
              <p className="mb-4 max-w-measure text-soft">
                A student’s own due time stands over the group’s; of several groups the latest
                holds.
              </p>
              <ActionForm
                idPrefix="more-time"
                action={giveMoreTime.bind(null, assignmentId)}
                fields={[
                  {
                    name: 'who',
                    label: 'Who',
                    type: 'select',
                    options: [
                      { value: '', label: 'Choose …' },
                      ...groups.map(({ id, name, members }) => ({
                        value: whoOf('group', id),
                        label: `Group ${name} (${members === 1 ? 'one student' : `${String(members)} students`})`,
                      })),
                      ...students.map(({ id, name }) => ({
                        value: whoOf('student', id),
                        label: name,
                      })),
                    ],
                  },
                  { name: 'date', label: 'Due date for them', type: 'date' },
                  {
                    name: 'time',
                    label: 'Due time for them',
                    hint: `On the clock of ${timeZone}.`,
                    type: 'time',
                    defaultValue: '18:00',
                  },
                  {
                    name: 'note',
                    label: 'Why',
                    hint: 'Kept with the change. Students’ pages do not show it.',
                    type: 'note',
                  },
                ]}
                submitLabel="Give more time"
                busyLabel="Giving"
              />
            </div>
          </details>
        )}
        <Lasting accommodations={accommodations} />
      </div>
    </Panel>
  );
}

const extraTimeWords: Readonly<Record<ExtraTime, string>> = {
  none: 'no more than the others',
  '1.25': 'a quarter more of it',
  '1.5': 'half as much again',
  '2': 'twice as much',
  untimed: 'no limit',
};

/** What holds for a student everywhere is changed on the student's page. */
function Lasting({ accommodations }: Pick<AssignmentExtensions, 'accommodations'>) {
  if (accommodations.length === 0) return null;
  return (
    <div>
      <h3 className="font-semibold">In every assignment</h3>
      <ul className="mt-1 space-y-1">
        {accommodations.map(({ studentId, name, extraAttempts, extraTime }) => (
          <li key={studentId}>
            <TextLink href={routes.teacher.student(studentId)}>{name}</TextLink>:{' '}
            {[
              ...(extraAttempts === 0
                ? []
                : [
                    extraAttempts === 1
                      ? 'one attempt more'
                      : `${String(extraAttempts)} attempts more`,
                  ]),
              ...(extraTime === 'none' ? [] : [`where time counts, ${extraTimeWords[extraTime]}`]),
            ].join('; ')}
          </li>
        ))}
      </ul>
    </div>
  );
}
