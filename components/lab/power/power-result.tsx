import { BenchResultView } from '@/components/grading/bench-result-view';
import type { PowerResult } from '@/lib/grading/bench/power-result';
import type { PowerVariant } from '@/lib/variants/bench/power-variant';

type PowerResultViewProps = {
  variant: PowerVariant;
  result: PowerResult;
  markShownAbove?: boolean;
};

/** What came of "Power": for student and teacher alike. */
export function PowerResultView({ result, markShownAbove = false }: PowerResultViewProps) {
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
