import { BenchResultView } from '@/components/grading/bench-result-view';
import type { PowerResult } from '@/lib/grading/bench/power/power-result';
import type { PowerVariant } from '@/lib/variants/bench/power/power-variant';
import { PowerResultPicture } from './power-result-picture';
import { criterionNames, gateWords, slipWords, verdictOf } from './power-result-words';

type PowerResultViewProps = {
  variant: PowerVariant;
  result: PowerResult;
  markShownAbove?: boolean;
};

/** What came of "Power": for student and teacher alike. */
export function PowerResultView({ variant, result, markShownAbove = false }: PowerResultViewProps) {
  return (
    <BenchResultView
      verdict={verdictOf(result)}
      result={result}
      criterionName={(id) => criterionNames[id]}
      gateWords={gateWords}
      slipWords={slipWords}
      picture={<PowerResultPicture variant={variant} result={result} />}
      markShownAbove={markShownAbove}
    />
  );
}
