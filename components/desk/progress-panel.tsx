import Link from 'next/link';
import { GradebookStateMark } from '@/components/grading/gradebook-state-mark';
import { markText } from '@/components/grading/mark-text';
import { Panel } from '@/components/ui/panel';
import type { GradebookCell } from '@/lib/data/gradebook';
import { routes } from '@/lib/routes';
import { KeepFresh } from './keep-fresh';

export type ProgressRow = { id: string; displayName: string; cell: GradebookCell };

type Stage = 'waiting' | 'working' | 'in' | 'excused';
const stageOf = ({ state, attempts }: GradebookCell): Stage => {
  if (state === 'excused') return 'excused';
  if (state === 'in-progress') return 'working';
  return attempts === 0 || state === 'not-started' || state === 'missing' ? 'waiting' : 'in';
};
const stages: readonly (readonly [Stage, string])[] = [
  ['waiting', 'Not started'],
  ['working', 'In progress'],
  ['in', 'Submitted'],
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
      {underWay === 0 ? null : (
        <p className="mb-3 text-soft">
          {underWay} {underWay === 1 ? 'attempt is' : 'attempts are'} open at this moment.
        </p>
      )}
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
                      <span className="flex items-center gap-2">
                        {cell.mark === null ? null : (
                          <span className="font-figures font-semibold">{markText(cell.mark)}</span>
                        )}
                        {stage === 'in' || cell.state === 'missing' ? (
                          <GradebookStateMark state={cell.state} />
                        ) : null}
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
