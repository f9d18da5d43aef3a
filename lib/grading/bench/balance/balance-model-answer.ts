import { bestClampMm } from '../../../balance/answers';
import type { BalanceAction } from '../../../balance/tube-bench';
import type { BalanceVariant } from '../../../variants/bench/balance/balance-variant';
import type { BalanceSubmission } from './balance-submission';
import { movesAskedAbout, partsThatHold, readingAskedFor } from './balance-truth';

/** What an operator who makes no mistake hands in. */
export function balanceModelAnswer(variant: BalanceVariant): BalanceSubmission {
  const { start, range } = variant;
  const on = partsThatHold(variant);
  // To the millimetre, as the bar's scale is read.
  const clampMm = Math.round(bestClampMm(variant, on));
  const actions: BalanceAction[] = [
    ...(variant.asksForesight ? [{ do: 'foresee', moves: movesAskedAbout(variant) } as const] : []),
    ...(start.handOn ? [] : [{ do: 'hand', on: true } as const]),
    ...on
      .filter((id) => !start.on.includes(id))
      .map((id) => ({ do: 'part', id, on: true }) as const),
    { do: 'stop', in: false },
    { do: 'clamp', open: true },
    { do: 'slide', toMm: clampMm },
    { do: 'clamp', open: false },
    { do: 'stop', in: true },
    { do: 'tip', toDeg: range.lowDeg },
    { do: 'hand', on: false },
    { do: 'hand', on: true },
    { do: 'tip', toDeg: range.highDeg },
    { do: 'hand', on: false },
  ];
  return {
    actions,
    readingMm: variant.asksReading ? Math.round(readingAskedFor(variant).trueMm) : null,
  };
}
