import { BenchResultView } from '@/components/grading/bench-result-view';
import type { PutItTogetherResult } from '@/lib/grading/bench/put-it-together-result';
import type { PutItTogetherVariant } from '@/lib/variants/bench/put-it-together-variant';

type PutItTogetherResultViewProps = {
  variant: PutItTogetherVariant;
  result: PutItTogetherResult;
  markShownAbove?: boolean;
};

/** What came of "Put it together": for student and teacher alike. */
export function PutItTogetherResultView({
  result,
  markShownAbove = false,
}: PutItTogetherResultViewProps) {
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
