import { FaultResultView } from '@/components/grading/fault/fault-result-view';
import { PairResultView } from '@/components/grading/pair/pair-result-view';
import { QuestionSetResult } from '@/components/grading/questions/question-set-result';
import { RunResultView } from '@/components/grading/run/run-result-view';
import { BenchResult } from '@/components/lab/bench/bench-result';
import { wholeFaultView } from '@/components/lab/fault/fault-view';
import { pairLabSky } from '@/components/lab/pair/pair-lab-sky';
import { skyPictureStars } from '@/components/sky/sky-picture-stars';
import { loadCatalogue } from '@/lib/content/sky-catalogue';
import type { AttemptResult } from '@/lib/data/attempts';

/** What came of an attempt, as its lab shows it; the same to student and teacher. */
export function AttemptOutcome({
  attempt,
  kitName,
  markShownAbove = false,
}: {
  attempt: AttemptResult;
  kitName: string;
  markShownAbove?: boolean;
}) {
  const { placeName } = attempt;
  if (attempt.result === null) return null;
  const catalogue = loadCatalogue();
  switch (attempt.lab) {
    case 'pick-the-pair':
      return (
        <PairResultView
          result={attempt.result}
          sky={pairLabSky(attempt.variant, { kitName, placeName })}
          stars={skyPictureStars(catalogue, attempt.variant.frame)}
          markShownAbove={markShownAbove}
        />
      );
    case 'alignment-run':
      return (
        <RunResultView
          result={attempt.result}
          variant={attempt.variant}
          stars={skyPictureStars(catalogue, attempt.variant.frame)}
          markShownAbove={markShownAbove}
        />
      );
    case 'what-went-wrong':
      return (
        <FaultResultView
          result={attempt.result}
          variant={wholeFaultView(attempt.variant, { placeName, catalogue })}
          markShownAbove={markShownAbove}
        />
      );
    case 'lesson-questions':
      return (
        <QuestionSetResult
          set={attempt.variant}
          result={attempt.result}
          markShownAbove={markShownAbove}
        />
      );
    default: {
      const { variant, result } = attempt;
      return <BenchResult {...{ variant, result, markShownAbove }} />;
    }
  }
}
