import { BenchResultView } from '@/components/grading/bench-result-view';
import type { FinderResult } from '@/lib/grading/bench/finder-result';
import type { FinderVariant } from '@/lib/variants/bench/finder-variant';

type FinderResultViewProps = {
  variant: FinderVariant;
  result: FinderResult;
  markShownAbove?: boolean;
};

/** What came of "Finder": for student and teacher alike. */
export function FinderResultView({ result, markShownAbove = false }: FinderResultViewProps) {
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
