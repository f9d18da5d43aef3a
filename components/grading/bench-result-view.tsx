import type { ReactNode } from 'react';
import { Meter } from '@/components/ui/meter';
import { Notice } from '@/components/ui/notice';
import { Panel } from '@/components/ui/panel';
import type { BenchResult } from '@/lib/grading/bench/bench-result';
import { markText } from './mark-text';
import { MarksTable } from './marks-table';

/** What is said of one slip: what happened and how far off, why that matters, what to do next time. */
export type SlipWords = { what: string; why: string; next: string };

type BenchResultViewProps<
  C extends string,
  G extends { id: string },
  S extends { code: string },
> = {
  /** The whole of it in one sentence. */
  verdict: string;
  result: BenchResult<string, string, C, G, S>;
  criterionName: (id: C) => string;
  /** A failed safety gate: what was done, and what it could have done to somebody. */
  gateWords: (gate: G) => { title: string; text: string };
  slipWords: (slip: S) => SlipWords;
  /** What was set, as it was left, and as it should have been. */
  picture: ReactNode;
  /** Below the picture: figures, a table, what is worth knowing. */
  children?: ReactNode;
  markShownAbove: boolean;
};

/** What came of a bench task: the same to student and teacher. */
export function BenchResultView<
  C extends string,
  G extends { id: string },
  S extends { code: string },
>(props: BenchResultViewProps<C, G, S>) {
  const { result, picture } = props;
  return (
    <div className="space-y-8">
      <div className="grid gap-6 lg:grid-cols-[minmax(0,1fr)_minmax(0,26rem)]">
        <div className="max-w-measure space-y-4">
          <p className="text-xl leading-snug font-semibold">{props.verdict}</p>
          {props.markShownAbove ? null : (
            <Meter
              value={result.total}
              label="Mark"
              valueText={`${markText(result.total)} of 100`}
            />
          )}
          {result.gates.map((gate) => {
            const { title, text } = props.gateWords(gate);
            return (
              <Notice key={gate.id} tone="danger" title={`Not yet: ${title}`}>
                {text}
              </Notice>
            );
          })}
        </div>
        <MarksTable
          rows={result.criteria.map((criterion) => ({
            ...criterion,
            name: props.criterionName(criterion.id),
          }))}
        />
      </div>
      {picture}
      {result.slips.length === 0 ? null : (
        <Panel title="What to do differently">
          <ol className="max-w-measure list-decimal space-y-4 ps-5">
            {result.slips.map((slip, index) => {
              const { what, why, next } = props.slipWords(slip);
              return (
                // The same slip may be made twice, and the list never changes.
                <li key={`${slip.code}-${String(index)}`}>
                  <strong className="font-semibold">{what}</strong> {why}
                  <span className="mt-1 block border-s-4 border-accent ps-3">{next}</span>
                </li>
              );
            })}
          </ol>
        </Panel>
      )}
      {props.children}
    </div>
  );
}
