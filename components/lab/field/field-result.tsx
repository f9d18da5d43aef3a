import { BenchResultView } from '@/components/grading/bench-result-view';
import type { FieldResult } from '@/lib/grading/bench/field-result';
import type { FieldVariant } from '@/lib/variants/bench/field-variant';

type FieldResultViewProps = {
  variant: FieldVariant;
  result: FieldResult;
  markShownAbove?: boolean;
};

/** What came of "Field": for student and teacher alike. */
export function FieldResultView({ result, markShownAbove = false }: FieldResultViewProps) {
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
