'use client';

import { tubeInClamp } from '@/lib/balance/tube-in-clamp';
import type { BalanceState } from '@/lib/balance/tube-bench';
import type { BalanceVariant } from '@/lib/variants/bench/balance/balance-variant';
import { degText, torqueText } from './balance-words';
import { TorquePlot } from './torque-plot';

type LivePlotProps = {
  variant: BalanceVariant;
  state: BalanceState;
  mode: 'practice' | 'check';
  className?: string;
};

/**
 * What is known of the tube's torque. In practice the whole curve, once it was said what is expected;
 * in a check, and where the weights are unknown, only what letting go has shown, as outdoors.
 */
export function LivePlot({ variant, state, mode, className }: LivePlotProps) {
  const curveShown = knowsCurve(variant, state, mode);
  const trials = trialsNow(state);
  const seen =
    trials.length === 0
      ? 'Not let go yet as it is now.'
      : trials
          .map(
            ({ altitudeDeg, moves }) =>
              `${degText(altitudeDeg)}: ${moves === 'holds' ? 'holds' : `${moves} sinks`}`,
          )
          .join(', ');
  return (
    <TorquePlot
      holdingTorqueNm={variant.holdingTorqueNm}
      range={variant.range}
      tube={curveShown ? tubeInClamp(variant, state) : null}
      trials={trials}
      altitudeDeg={state.altitudeDeg}
      label={`Torque against altitude; the clutch holds ${torqueText(variant.holdingTorqueNm)}. ${seen}`}
      {...(className === undefined ? {} : { className })}
    />
  );
}

export const knowsCurve = (
  variant: BalanceVariant,
  state: BalanceState,
  mode: 'practice' | 'check',
): boolean =>
  mode === 'practice' && variant.weightsTold && (!variant.asksForesight || state.foreseen !== null);

/** Trials of the tube as it is now: before it was slid or loaded otherwise they say nothing of it. */
export const trialsNow = ({ trials, arrangement }: BalanceState) =>
  trials.filter((trial) => trial.arrangement === arrangement);
