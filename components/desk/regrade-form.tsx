'use client';

import { TableFrame } from '@/components/ui/table-frame';
import { ErrorSummary } from '@/components/ui/error-summary';
import { StatusLine } from '@/components/ui/status-line';
import { SubmitButton } from '@/components/ui/submit-button';
import { TextLink } from '@/components/ui/text-link';
import { routes } from '@/lib/routes';
import type { FormActionFunction } from './action-form';
import { useFormAction } from '../ui/use-form-action';

/** One difference, in words: the page makes them, so that the browser needs no graders. */
export type RegradeRow = {
  attemptId: string;
  /** "Ann, Level, attempt 2" */
  whose: string;
  before: string;
  after: string;
  /** What changed within the mark. */
  why: string;
  lowers: boolean;
  /** "Your own mark of 75 stands." or nothing. */
  note: string;
};

/** What a regrade would change: what rises is ticked, what falls is the teacher's to tick. */
export function RegradeForm({
  rows,
  action,
}: {
  rows: readonly RegradeRow[];
  action: FormActionFunction;
}) {
  const { problem, said, send } = useFormAction(action);
  return (
    <form action={send} className="space-y-4">
      <ErrorSummary problems={problem === null ? [] : [problem]} />
      {rows.length === 0 ? null : (
        <>
          <TableFrame caption="Marks that would change" captionHidden tall>
            <thead>
              <tr>
                <th scope="col">Take over</th>
                <th scope="col">Whose</th>
                <th scope="col">Now</th>
                <th scope="col">Marked again</th>
                <th scope="col">What differs</th>
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => (
                <tr key={row.attemptId}>
                  <td>
                    <label className="inline-flex min-h-(--target-small) items-center gap-2">
                      <input
                        type="checkbox"
                        className="size-5 accent-(--lamp-edge)"
                        name={row.lowers ? 'lower' : 'accept'}
                        value={row.attemptId}
                        defaultChecked={!row.lowers}
                      />
                      <span>{row.lowers ? 'lower it' : 'take over'}</span>
                      <span className="sr-only">: {row.whose}</span>
                    </label>
                  </td>
                  <th scope="row">
                    <TextLink href={routes.teacher.attempt(row.attemptId)}>{row.whose}</TextLink>
                  </th>
                  <td>{row.before}</td>
                  <td className={row.lowers ? 'text-caution' : undefined}>
                    {row.after}
                    {row.lowers ? ' (lower)' : ''}
                  </td>
                  <td>
                    {row.why}
                    {row.note === '' ? null : <span className="block text-soft">{row.note}</span>}
                  </td>
                </tr>
              ))}
            </tbody>
          </TableFrame>
          <SubmitButton busyLabel="Marking again">Take over what is ticked</SubmitButton>
        </>
      )}
      <StatusLine>{said}</StatusLine>
    </form>
  );
}
