'use client';

import { useEffect, useRef } from 'react';
import { Button } from '@/components/ui/button';
import { Checkbox } from '@/components/ui/checkbox';
import { Notice } from '@/components/ui/notice';
import { TableFrame } from '@/components/ui/table-frame';
import type { RosterPreview } from '@/lib/data/roster-import';
import type { RosterChange } from '@/lib/roster/plan-roster';
import type { LeftOutRow } from '@/lib/roster/list-check';
import { changesAnything, changeText, commitText, countsText } from './change-text';
import { LeftOutRows } from './left-out-rows';

const order: readonly RosterChange['kind'][] = ['leave', 'add', 'rename', 'back', 'same'];

/** What the import would do, before it does: the changes first, then who stays as they are. */
export function ImportPreview({
  preview,
  source,
  leftOut,
  keepNames,
  onKeepNames,
  onCommit,
  onBack,
  busy,
}: {
  preview: RosterPreview;
  source: string;
  leftOut: readonly LeftOutRow[];
  keepNames: boolean;
  onKeepNames: (keep: boolean) => void;
  onCommit: () => void;
  onBack: () => void;
  busy: boolean;
}) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus();
  }, [preview]);

  const { counts, changes } = preview;
  const shown = order.flatMap((kind) => changes.filter((change) => change.kind === kind));
  // Rows count in the file; who has left stands in none.
  const stay = counts.same + counts.rename;
  return (
    <section aria-labelledby="import-preview" className="space-y-4">
      <div>
        <h3 id="import-preview" ref={heading} tabIndex={-1} className="text-lg font-semibold">
          Before anything changes
        </h3>
        <p>
          {source}: {countsText(counts)}.
        </p>
      </div>
      {preview.fromAnotherClass ? (
        <Notice tone="caution" title="Last time another class of the school’s file was taken">
          <p>Go back and look whether the right class of the file is chosen.</p>
        </Notice>
      ) : null}
      {counts.leave > stay ? (
        <Notice tone="caution" title="More students would leave than stay">
          <p>Is it the right class of the file? Nothing has changed yet.</p>
        </Notice>
      ) : null}
      {counts.rename > 0 || keepNames ? (
        <Checkbox
          label="Keep the names as they are here"
          hint="For pseudonyms and names that you put right by hand."
          checked={keepNames}
          disabled={busy}
          onChange={(event) => onKeepNames(event.target.checked)}
        />
      ) : null}
      <LeftOutRows source={source} rows={leftOut} />
      <TableFrame caption="What becomes of each student" className="max-w-3xl">
        <thead>
          <tr>
            <th scope="col" className="number">
              Row
            </th>
            <th scope="col">Student</th>
            <th scope="col">What changes</th>
          </tr>
        </thead>
        <tbody>
          {shown.map((change) => (
            <tr key={change.kind === 'add' ? `row ${change.row}` : change.studentId}>
              <td className="number">{'row' in change ? change.row : ''}</td>
              <th scope="row">{'name' in change ? change.name : change.was}</th>
              <td className={change.kind === 'same' ? 'text-soft' : undefined}>
                {changeText(change)}
              </td>
            </tr>
          ))}
        </tbody>
      </TableFrame>
      <div className="flex flex-wrap items-center gap-3">
        {changesAnything(counts) ? (
          <Button variant="primary" busy={busy} onClick={onCommit}>
            {commitText(counts)}
          </Button>
        ) : (
          <p>There is nothing to change: the class is as the list says.</p>
        )}
        <Button disabled={busy} onClick={onBack}>
          Back to the list
        </Button>
      </div>
    </section>
  );
}
