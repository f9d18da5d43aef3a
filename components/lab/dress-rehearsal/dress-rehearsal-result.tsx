import { BenchResultView } from '@/components/grading/bench-result-view';
import type { DressRehearsalResult } from '@/lib/grading/bench/dress-rehearsal-result';
import type { DressRehearsalVariant } from '@/lib/variants/bench/dress-rehearsal-variant';

type DressRehearsalResultViewProps = {
  variant: DressRehearsalVariant;
  result: DressRehearsalResult;
  markShownAbove?: boolean;
};

/** What came of "Dress rehearsal": for student and teacher alike. */
export function DressRehearsalResultView({
  result,
  markShownAbove = false,
}: DressRehearsalResultViewProps) {
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
