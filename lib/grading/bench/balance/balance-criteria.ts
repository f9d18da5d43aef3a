import type { BalanceVariant } from '../../../variants/bench/balance/balance-variant';
import { balanceGates } from './balance-gates';
import type { BalanceJudgement } from './balance-judgement';
import type { BalanceCriterion } from './balance-result';
import type { BenchCriterion } from '../bench-result';

/** Full marks up to `full`, none from `zero` on, linear between. Design, "Grading". */
const band = (value: number, full: number, zero: number): number =>
  Math.max(0, Math.min(1, (zero - value) / (zero - full)));

/** A hundredth more than the clutch holds: the benefit of the doubt at the limit. */
const strainThatHolds = 1.01;

/** Of what sliding could have spared at best, so much may be given away without a mark. */
const reserveGivenAway = 0.35;

const fullReadingMm = 2;
const noReadingMm = 8;

export function balanceCriteria(
  variant: BalanceVariant,
  judgement: BalanceJudgement,
): BenchCriterion<BalanceCriterion>[] {
  const { asksForesight, asksReading } = variant;
  const line = (id: BalanceCriterion, possible: number, share: number) => ({
    id,
    possible,
    earned: possible * share,
  });
  const { foreseen, reading } = judgement;
  return [
    ...(asksForesight
      ? [
          line(
            'foreseen',
            asksReading ? 5 : 15,
            foreseen?.said === foreseen?.was && foreseen !== null ? 1 : 0,
          ),
        ]
      : []),
    ...(asksReading
      ? [
          line(
            'reading',
            asksForesight ? 10 : 15,
            reading === null ? 0 : band(Math.abs(reading.offMm), fullReadingMm, noReadingMm),
          ),
        ]
      : []),
    line('holds', 30, holds(judgement)),
    line('reserve', 15, reserve(judgement)),
    line('tested', 20, tested(judgement)),
    line('handling', 20, handling(judgement)),
  ];
}

/** One end of the range says little of the other: both together are worth far more than twice one. */
const tested = ({ testedLow, testedHigh }: BalanceJudgement): number =>
  testedLow && testedHigh ? 1 : testedLow || testedHigh ? 0.25 : 0;

/** None of it from twice the torque that the clutch holds. */
const holds = ({ strain }: BalanceJudgement): number => band(strain, strainThatHolds, 2);

function reserve({ strain, leastStrain }: BalanceJudgement): number {
  if (leastStrain >= 1) return 0;
  return band(strain, leastStrain + reserveGivenAway * (1 - leastStrain), 1);
}

/** Half for each time it swung or was opened raised; nothing where the tube was free, or never tried. */
function handling({ state }: BalanceJudgement): number {
  if (state.trials.length === 0 || balanceGates(state).length > 0) return 0;
  return Math.max(0, 1 - (state.swings.length + state.openedRaisedDeg.length) / 2);
}
