import { BenchResultView } from '@/components/grading/bench-result-view';
import { Panel } from '@/components/ui/panel';
import type { LevelResult } from '@/lib/grading/bench/level/level-result';
import type { LevelVariant } from '@/lib/variants/bench/level/level-variant';
import { LevelCosts } from './level-costs';
import { LevelResultPicture } from './level-result-picture';
import { criterionNames, gateWords, levelVerdict, slipWords } from './level-result-words';

type LevelResultViewProps = {
  variant: LevelVariant;
  result: LevelResult;
  markShownAbove?: boolean;
};

/** What came of "Level": for student and teacher alike. */
export function LevelResultView({ variant, result, markShownAbove = false }: LevelResultViewProps) {
  return (
    <BenchResultView
      verdict={levelVerdict(variant, result)}
      result={result}
      criterionName={(id) => criterionNames[id]}
      gateWords={gateWords}
      slipWords={(slip) => slipWords(variant, slip)}
      picture={<LevelResultPicture variant={variant} result={result} />}
      markShownAbove={markShownAbove}
    >
      <Panel title="How level is level enough?" level={3}>
        <LevelCosts variant={variant} result={result} />
      </Panel>
    </BenchResultView>
  );
}
