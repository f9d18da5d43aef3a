import { BenchResultView } from '@/components/grading/bench-result-view';
import type { ClockAndPlaceResult } from '@/lib/grading/bench/clock-and-place-result';
import type { ClockAndPlaceVariant } from '@/lib/variants/bench/clock-and-place-variant';

type ClockAndPlaceResultViewProps = {
  variant: ClockAndPlaceVariant;
  result: ClockAndPlaceResult;
  markShownAbove?: boolean;
};

/** What came of "Clock and place": for student and teacher alike. */
export function ClockAndPlaceResultView({
  result,
  markShownAbove = false,
}: ClockAndPlaceResultViewProps) {
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
