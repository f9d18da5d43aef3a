import { BalanceResultView } from '../balance/balance-result';
import { ClockAndPlaceResultView } from '../clock-and-place/clock-and-place-result';
import { DressRehearsalResultView } from '../dress-rehearsal/dress-rehearsal-result';
import { FieldResultView } from '../field/field-result';
import { FinderResultView } from '../finder/finder-result';
import { LevelResultView } from '../level/level-result';
import { PowerResultView } from '../power/power-result';
import { PutItTogetherResultView } from '../put-it-together/put-it-together-result';
import type { AnyBenchResult } from '@/lib/grading/bench/any-bench-result';
import type { AnyBenchVariant } from '@/lib/variants/bench/bench-labs';

type BenchResultProps = {
  variant: AnyBenchVariant;
  result: AnyBenchResult;
  markShownAbove?: boolean;
};

/** What came of a bench task, as its lab shows it. */
export function BenchResult({ variant, result, markShownAbove = false }: BenchResultProps) {
  const shared = { markShownAbove };
  if (variant.lab === 'put-it-together' && result.lab === 'put-it-together')
    return <PutItTogetherResultView {...shared} variant={variant} result={result} />;
  if (variant.lab === 'level' && result.lab === 'level')
    return <LevelResultView {...shared} variant={variant} result={result} />;
  if (variant.lab === 'balance' && result.lab === 'balance')
    return <BalanceResultView {...shared} variant={variant} result={result} />;
  if (variant.lab === 'power' && result.lab === 'power')
    return <PowerResultView {...shared} variant={variant} result={result} />;
  if (variant.lab === 'finder' && result.lab === 'finder')
    return <FinderResultView {...shared} variant={variant} result={result} />;
  if (variant.lab === 'field' && result.lab === 'field')
    return <FieldResultView {...shared} variant={variant} result={result} />;
  if (variant.lab === 'clock-and-place' && result.lab === 'clock-and-place')
    return <ClockAndPlaceResultView {...shared} variant={variant} result={result} />;
  if (variant.lab === 'dress-rehearsal' && result.lab === 'dress-rehearsal')
    return <DressRehearsalResultView {...shared} variant={variant} result={result} />;
  throw new Error(`a result of ${result.lab} cannot be shown with a task of ${variant.lab}`);
}
