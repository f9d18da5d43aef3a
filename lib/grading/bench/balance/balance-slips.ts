import type { BalanceVariant } from '../../../variants/bench/balance/balance-variant';
import type { BalanceJudgement } from './balance-judgement';
import type { BalanceCriterion, BalanceSlip } from './balance-result';
import { readingAskedFor } from './balance-truth';
import type { BenchCriterion } from '../bench-result';

/** What went wrong, dearest first. */
export function balanceSlips(
  variant: BalanceVariant,
  judgement: BalanceJudgement,
  criteria: readonly BenchCriterion<BalanceCriterion>[],
): BalanceSlip[] {
  const lost = (id: BalanceCriterion): number => {
    const criterion = criteria.find((one) => one.id === id);
    return criterion === undefined ? 0 : criterion.possible - criterion.earned;
  };
  const { state, missing } = judgement;
  const found: { cost: number; slip: BalanceSlip }[] = [];
  const add = (cost: number, slip: BalanceSlip): void => {
    found.push({ cost, slip });
  };

  if (lost('holds') > 0) add(lost('holds') + lost('reserve'), creeps(variant, judgement));
  else if (lost('reserve') > 0)
    add(lost('reserve'), {
      code: 'little-reserve',
      sparePercent: 100 * (1 - judgement.strain),
      slideMm: judgement.bestClampMm - state.clampMm,
    });
  if (missing.length > 0)
    add(30, {
      code: 'part-missing',
      names: missing.map((id) => variant.parts.find((part) => part.id === id)?.name ?? id),
    });
  if (judgement.foreseen !== null && lost('foreseen') > 0)
    add(lost('foreseen'), { code: 'foreseen-wrong', ...judgement.foreseen });
  if (judgement.reading !== null && lost('reading') > 0)
    add(lost('reading'), readingOff(variant, judgement.reading.saidMm));
  if (lost('tested') > 0)
    add(lost('tested'), {
      code: 'not-tested',
      low: !judgement.testedLow,
      high: !judgement.testedHigh,
    });
  if (state.swings.length > 0) add(lost('handling'), swung(state.swings));
  if (state.openedRaisedDeg.length > 0)
    add(lost('handling'), {
      code: 'opened-raised',
      times: state.openedRaisedDeg.length,
      highestDeg: Math.max(...state.openedRaisedDeg),
    });
  return found.sort((a, b) => b.cost - a.cost).map(({ slip }) => slip);
}

function creeps(variant: BalanceVariant, judgement: BalanceJudgement): BalanceSlip {
  const { worst, state, bestClampMm, barReaches, balancedLevel } = judgement;
  return {
    code: 'creeps',
    end: worst.torqueNm > 0 ? 'front' : 'back',
    atDeg: worst.altitudeDeg,
    torqueNm: Math.abs(worst.torqueNm),
    slideMm: bestClampMm - state.clampMm,
    because: !barReaches
      ? 'bar-too-short'
      : variant.template === 'raised' && balancedLevel
        ? 'balanced-level-only'
        : 'off-balance',
  };
}

function swung(swings: readonly { fromDeg: number; toDeg: number }[]): BalanceSlip {
  const worst = swings.reduce((most, next) =>
    Math.abs(next.toDeg - next.fromDeg) > Math.abs(most.toDeg - most.fromDeg) ? next : most,
  );
  return {
    code: 'swung',
    times: swings.length,
    worstFromDeg: worst.fromDeg,
    worstToDeg: worst.toDeg,
  };
}

/** A figure within this of what a known mistake gives is taken for that mistake, millimetres. */
const alikeMm = 2.5;

function readingOff(variant: BalanceVariant, saidMm: number): BalanceSlip {
  const { trueMm, edgesMm, wrongWayMm, massLeftOutMm, edgeMm } = readingAskedFor(variant);
  const alike = (mm: number | null): boolean => mm !== null && Math.abs(saidMm - mm) <= alikeMm;
  return {
    code: 'reading-off',
    saidMm,
    wasMm: trueMm,
    edgeMm,
    mistake: edgesMm.some(alike)
      ? 'one-edge'
      : alike(wrongWayMm)
        ? 'wrong-way'
        : alike(massLeftOutMm)
          ? 'mass-left-out'
          : 'none',
  };
}
