import { BenchResultView } from '@/components/grading/bench-result-view';
import { arcminuteInWords } from '@/components/sky/angle-words';
import type { FinderResult } from '@/lib/grading/bench/finder/finder-result';
import type { FinderVariant } from '@/lib/variants/bench/finder/finder-variant';
import { FinderResultPicture } from './finder-result-picture';
import {
  finderCriterionNames,
  finderSlipWords,
  finderVerdict,
  sharesInWords,
} from './finder-result-words';
import { hazardInWords } from './finder-words';

type FinderResultViewProps = {
  variant: FinderVariant;
  result: FinderResult;
  markShownAbove?: boolean;
};

/** What came of "Finder": for student and teacher alike. */
export function FinderResultView({
  variant,
  result,
  markShownAbove = false,
}: FinderResultViewProps) {
  return (
    <BenchResultView
      verdict={finderVerdict(variant, result)}
      result={result}
      criterionName={(id) => finderCriterionNames[id]}
      gateWords={hazardInWords}
      slipWords={(slip) => finderSlipWords(slip, variant)}
      picture={<FinderResultPicture variant={variant} result={result} />}
      markShownAbove={markShownAbove}
    >
      <p className="max-w-measure">
        {sharesInWords(result)} {arcminuteInWords}
      </p>
    </BenchResultView>
  );
}
