import { BenchResultView } from '@/components/grading/bench-result-view';
import type { LevelResult } from '@/lib/grading/bench/level-result';
import type { LevelVariant } from '@/lib/variants/bench/level-variant';

type LevelResultViewProps = {
  variant: LevelVariant;
  result: LevelResult;
  markShownAbove?: boolean;
};

/** What came of "Level": for student and teacher alike. */
export function LevelResultView({ result, markShownAbove = false }: LevelResultViewProps) {
  return (
    <BenchResultView
      verdict=""
      result={result}
      criterionName={() => ''}
      gateWords={() => ({ title: '', text: '' })}
      slipWords={() => ({ what: '', why: '', next: '' })}
      picture={null}
      markShownAbove={markShownAbove}
    />
  );
}
