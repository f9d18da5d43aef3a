import type { ReactNode } from 'react';
import { markText } from '@/components/grading/mark-text';
import { RunResultView } from '@/components/grading/run/run-result-view';
import { Panel } from '@/components/ui/panel';
import type {
  BenchResults,
  DressRehearsalResult,
} from '@/lib/grading/bench/dress-rehearsal/dress-rehearsal-result';
import type { DressRehearsalVariant } from '@/lib/variants/bench/dress-rehearsal/dress-rehearsal-variant';
import { BalanceResultView } from '../balance/balance-result';
import { ClockAndPlaceResultView } from '../clock-and-place/clock-and-place-result';
import { FinderResultView } from '../finder/finder-result';
import { LevelResultView } from '../level/level-result';
import { PowerResultView } from '../power/power-result';
import { PutItTogetherResultView } from '../put-it-together/put-it-together-result';
import { stageWords } from './stage-words';

type StageResultsProps = { variant: DressRehearsalVariant; result: DressRehearsalResult };

/** Each stage's own lab on the work that was left there, folded. */
export function StageResults({ variant, result }: StageResultsProps) {
  const { benches: tasks } = variant;
  const { benches, run } = result;
  return (
    <Panel title="Stage by stage">
      <div className="divide-y divide-line">
        <Stage id="put-it-together" of={benches}>
          {(it) => <PutItTogetherResultView variant={tasks['put-it-together']} result={it} />}
        </Stage>
        <Stage id="level" of={benches}>
          {(it) => <LevelResultView variant={tasks.level} result={it} />}
        </Stage>
        <Stage id="balance" of={benches}>
          {(it) => <BalanceResultView variant={tasks.balance} result={it} />}
        </Stage>
        <Stage id="finder" of={benches}>
          {(it) => <FinderResultView variant={tasks.finder} result={it} />}
        </Stage>
        <Stage id="power" of={benches}>
          {(it) => <PowerResultView variant={tasks.power} result={it} />}
        </Stage>
        <Stage id="clock-and-place" of={benches}>
          {(it) => <ClockAndPlaceResultView variant={tasks['clock-and-place']} result={it} />}
        </Stage>
        <Folded title={stageWords['alignment-run'].title} total={run?.total ?? null}>
          {run === null ? null : (
            <RunResultView
              variant={{
                scenario: variant.scenario,
                frame: variant.frame,
                kit: variant.kit,
                givenHip: null,
                proposals: null,
              }}
              result={run}
            />
          )}
        </Folded>
      </div>
    </Panel>
  );
}

function Stage<Id extends keyof BenchResults>({
  id,
  of,
  children,
}: {
  id: Id;
  of: BenchResults;
  children: (result: NonNullable<BenchResults[Id]>) => ReactNode;
}) {
  const result = of[id];
  return (
    <Folded title={stageWords[id].title} total={result?.total ?? null}>
      {result === null ? null : children(result)}
    </Folded>
  );
}

function Folded({
  title,
  total,
  children,
}: {
  title: string;
  total: number | null;
  children: ReactNode;
}) {
  if (total === null)
    return (
      <p className="py-3 text-soft">
        <span className="font-semibold">{title}</span>: not finished
      </p>
    );
  return (
    <details className="py-3">
      <summary className="cursor-pointer">
        <span className="font-semibold">{title}</span>: {markText(total)} of 100
      </summary>
      <div className="pt-4">{children}</div>
    </details>
  );
}
