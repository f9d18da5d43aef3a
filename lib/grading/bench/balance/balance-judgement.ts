import { bestClampMm, canHold, edgeMm, worstAt } from '../../../balance/answers';
import { wholeTube } from '../../../balance/tube-in-clamp';
import type { AltitudeRange, WorstTorque } from '../../../balance/holding';
import type { BalanceState, Moves } from '../../../balance/tube-bench';
import type { BalanceVariant } from '../../../variants/bench/balance/balance-variant';
import { movesAskedAbout, readingAskedFor } from './balance-truth';

/** All that the marks and the words are made of. */
export type BalanceJudgement = {
  state: BalanceState;
  /** What is used tonight, put on where it was left off. */
  on: readonly string[];
  missing: readonly string[];
  worst: WorstTorque;
  /** Worst torque against what the clutch holds: above 1 it creeps somewhere. */
  strain: number;
  /** The least strain that sliding could have reached with these parts. */
  leastStrain: number;
  bestClampMm: number;
  barReaches: boolean;
  /** Gripped at the balance point, or near it: all is well as long as the tube is level. */
  balancedLevel: boolean;
  foreseen: { said: Moves; was: Moves } | null;
  reading: { saidMm: number; offMm: number } | null;
  testedLow: boolean;
  testedHigh: boolean;
};

/** How near to an end of the range a trial counts for that end: this share of the range. */
const nearEnd = 0.15;

export function judgeBalance(
  variant: BalanceVariant,
  state: BalanceState,
  readingMm: number | null,
): BalanceJudgement {
  const missing = variant.needed.filter((id) => !state.on.includes(id));
  const on = withNeeded(variant, state.on, missing);
  const worst = worstAt(variant, on, state.clampMm);
  const bestMm = bestClampMm(variant, on);
  const least = worstAt(variant, on, bestMm);
  const tube = wholeTube(variant, on);
  const [testedLow, testedHigh] = testedEnds(state, variant.range);
  const foreseen = state.foreseen;
  return {
    state,
    on,
    missing,
    worst,
    testedLow,
    testedHigh,
    strain: Math.abs(worst.torqueNm) / variant.holdingTorqueNm,
    leastStrain: Math.abs(least.torqueNm) / variant.holdingTorqueNm,
    bestClampMm: bestMm,
    barReaches: canHold(variant, on),
    balancedLevel:
      Math.abs(state.clampMm - tube.alongMm) <= 0.4 * edgeMm(tube, variant.holdingTorqueNm),
    foreseen:
      foreseen === null || !variant.asksForesight
        ? null
        : { said: foreseen, was: movesAskedAbout(variant) },
    reading:
      readingMm === null || !variant.asksReading
        ? null
        : { saidMm: readingMm, offMm: readingMm - readingAskedFor(variant).trueMm },
  };
}

/** What was left off comes on again, and what sits in its place goes. */
function withNeeded(
  { parts }: BalanceVariant,
  on: readonly string[],
  missing: readonly string[],
): readonly string[] {
  const slotOf = (id: string): string | null => parts.find((part) => part.id === id)?.slot ?? null;
  const taken = missing.map(slotOf).filter((slot) => slot !== null);
  return [...on.filter((id) => !taken.includes(slotOf(id) ?? '')), ...missing];
}

/** Whether the tube as it was left was let go near the low end of the range, and near the high one. */
function testedEnds(
  { trials, arrangement }: BalanceState,
  { lowDeg, highDeg }: AltitudeRange,
): [boolean, boolean] {
  const near = nearEnd * (highDeg - lowDeg);
  const tried = trials.filter((trial) => trial.arrangement === arrangement);
  return [
    tried.some(({ altitudeDeg }) => Math.abs(altitudeDeg - lowDeg) <= near),
    tried.some(({ altitudeDeg }) => Math.abs(altitudeDeg - highDeg) <= near),
  ];
}
