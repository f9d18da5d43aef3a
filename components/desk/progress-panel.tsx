import Link from 'next/link';
import type { ReactNode } from 'react';
import { GradebookStateMark } from '@/components/grading/gradebook/gradebook-state-mark';
import { markText } from '@/components/grading/mark-text';
import { Panel } from '@/components/ui/panel';
import type { GradebookCell } from '@/lib/data/gradebook';
import { routes } from '@/lib/routes';
import { KeepFresh } from './keep-fresh';

export type ProgressRow = { id: string; displayName: string; cell: GradebookCell };

type Stage = 'waiting' | 'working' | 'in' | 'excused';
/** By what the student has done; an attempt that is still open after the due time is one, though missing. */
const stageOf = ({ state, countedAttemptId, underWay }: GradebookCell): Stage => {
  if (state === 'excused') return 'excused';
  if (countedAttemptId !== null) return 'in';
  return underWay ? 'working' : 'waiting';
};
const stages: readonly (readonly [Stage, string])[] = [
  ['waiting', 'Not started'],
  ['working', 'In progress'],
  ['in', 'Handed in'],
  ['excused', 'Excused'],
];

/** Who has not started, who is at it, who is done. */
export function ProgressPanel({
  rows,
  underWay,
}: {
  rows: readonly ProgressRow[];
  underWay: number;
}) {
  return (
    <Panel title="Progress" actions={<KeepFresh />} className="print:hidden">
      <p className="mb-3 max-w-measure text-soft">
        Each student stands here once: whoever has handed in at least one attempt under “Handed in”,
        with the mark that counts and where it leaves them.
        {underWay === 0
          ? ''
          : ` ${String(underWay)} ${underWay === 1 ? 'attempt is' : 'attempts are'} open at this moment.`}
      </p>
      <div className="grid gap-5 sm:grid-cols-2 lg:grid-cols-[repeat(auto-fit,minmax(15rem,1fr))]">
        {stages.map(([stage, title]) => {
          const there = rows.filter((row) => stageOf(row.cell) === stage);
          if (stage === 'excused' && there.length === 0) return null;
          return (
            <section key={stage} aria-label={title}>
              <h3 className="border-b border-strong font-semibold">
                {title}{' '}
                <span className="font-figures font-normal text-soft">
                  {there.length} of {rows.length}
                  <span className="sr-only"> students</span>
                </span>
              </h3>
              {there.length === 0 ? (
                <p className="mt-1 text-sm text-soft">nobody</p>
              ) : (
                <ul className="mt-1 max-h-80 overflow-y-auto text-sm print:max-h-none">
                  {there.map(({ id, displayName, cell }) => (
                    <li
                      key={id}
                      className="flex min-h-(--target-small) flex-wrap items-center justify-between gap-x-3"
                    >
                      <Link className="link" href={routes.teacher.student(id)}>
                        {displayName}
                      </Link>
                      <span className="flex flex-wrap items-center justify-end gap-x-2">
                        {cell.mark === null ? null : (
                          <span className="font-figures font-semibold">{markText(cell.mark)}</span>
                        )}
                        {stage === 'in' || cell.mark !== null || cell.state === 'missing' ? (
                          <GradebookStateMark state={cell.state} />
                        ) : null}
                        {noteOf(stage, cell)}
                      </span>
                    </li>
                  ))}
                </ul>
              )}
            </section>
          );
        })}
      </div>
    </Panel>
  );
}

/** What the place in the list and the state leave unsaid. */
function noteOf(stage: Stage, { underWay, overridden }: GradebookCell): ReactNode {
  const notes = [
    overridden ? 'set by hand' : '',
    stage === 'in' && underWay ? 'another under way' : '',
  ].filter((note) => note !== '');
  return notes.length === 0 ? null : <span className="text-xs text-soft">{notes.join(' · ')}</span>;
}
