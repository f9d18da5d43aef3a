import { BenchResultView } from '@/components/grading/bench-result-view';
import { clampedAt } from '@/lib/balance/torque';
import type { BalanceResult } from '@/lib/grading/bench/balance/balance-result';
import type { BalanceVariant } from '@/lib/variants/bench/balance/balance-variant';
import { balanceVerdict, criterionWords, gateWords, slipWords } from './balance-result-words';
import { mmText, torqueText } from './balance-words';
import { TorquePlot } from './torque-plot';

type BalanceResultViewProps = {
  variant: BalanceVariant;
  result: BalanceResult;
  markShownAbove?: boolean;
};

/** What came of "Balance": for student and teacher alike. */
export function BalanceResultView({
  variant,
  result,
  markShownAbove = false,
}: BalanceResultViewProps) {
  return (
    <BenchResultView
      verdict={balanceVerdict(variant, result)}
      result={result}
      criterionName={(id) => criterionWords[id]}
      gateWords={gateWords}
      slipWords={(slip) => slipWords(variant, slip)}
      picture={<BalancePicture variant={variant} result={result} />}
      markShownAbove={markShownAbove}
    />
  );
}

/** Torque against altitude: as it was left, and at the best place for what is on it. */
function BalancePicture({ variant, result }: { variant: BalanceVariant; result: BalanceResult }) {
  const { left, leftClampMm, bestClampMm, worstNm } = result.picture;
  const best =
    bestClampMm === null
      ? null
      : clampedAt(
          {
            massKg: left.massKg,
            alongMm: leftClampMm - left.forwardMm,
            aboveAxisMm: left.aboveMm,
          },
          bestClampMm,
        );
  return (
    <figure className="max-w-lg space-y-2">
      <TorquePlot
        holdingTorqueNm={variant.holdingTorqueNm}
        range={variant.range}
        tube={left}
        best={best}
        label={`Torque against altitude, as the tube was left: at most ${torqueText(worstNm)}. The clutch holds ${torqueText(variant.holdingTorqueNm)}.`}
        className="w-full border border-line bg-panel text-ink"
      />
      <figcaption className="max-w-measure text-sm text-soft">
        Grey band: what the clutch holds, {torqueText(variant.holdingTorqueNm)} either way. Solid
        line: the tube as you left it, clamped at {mmText(leftClampMm)}.{' '}
        {bestClampMm === null
          ? 'With what is on it no place on the bar lies in the band all the way.'
          : `Dashed: clamped at ${mmText(bestClampMm)}, the best place for what is on it.`}
      </figcaption>
    </figure>
  );
}
