import { BenchResultView } from '@/components/grading/bench-result-view';
import type { BalanceResult } from '@/lib/grading/bench/balance-result';
import type { BalanceVariant } from '@/lib/variants/bench/balance-variant';

type BalanceResultViewProps = {
  variant: BalanceVariant;
  result: BalanceResult;
  markShownAbove?: boolean;
};

/** What came of "Balance": for student and teacher alike. */
export function BalanceResultView({ result, markShownAbove = false }: BalanceResultViewProps) {
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
