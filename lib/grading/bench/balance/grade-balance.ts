import { afterAll } from '../../../balance/handle-tube';
import { tubeInClamp } from '../../../balance/tube-in-clamp';
import type { BalanceState } from '../../../balance/tube-bench';
import type { BalanceVariant } from '../../../variants/bench/balance/balance-variant';
import { balanceCriteria } from './balance-criteria';
import { balanceGates } from './balance-gates';
import { judgeBalance } from './balance-judgement';
import { balanceSlips } from './balance-slips';
import type { BenchGrading, BenchRefusal } from '../bench-result';
import type { BalanceResult } from './balance-result';
import type { BalanceSubmission } from './balance-submission';
import { totalOf } from '../../total-of';

/** Goes up whenever the same submission could earn other marks. */
export const balanceGraderVersion = 1;

/**
 * Replays what was done at the bench and judges the tube as it was left: whether the clutch holds it
 * over the whole range, with how much to spare, and how the learner came there. Design, "Balance".
 */
export function gradeBalance({
  variant,
  submission,
}: {
  variant: BalanceVariant;
  submission: BalanceSubmission;
}): BenchGrading<BalanceResult> {
  const state = afterAll(variant, submission.actions);
  const refusal = refusalOf(state);
  if (refusal !== null) return { ok: false, refusal };
  const judgement = judgeBalance(variant, state, submission.readingMm);
  const criteria = balanceCriteria(variant, judgement);
  return {
    ok: true,
    result: {
      lab: 'balance',
      graderVersion: balanceGraderVersion,
      template: variant.template,
      total: totalOf(criteria),
      criteria,
      gates: balanceGates(state),
      slips: balanceSlips(variant, judgement, criteria),
      picture: {
        left: tubeInClamp(variant, { on: judgement.on, clampMm: state.clampMm }),
        leftClampMm: state.clampMm,
        bestClampMm: judgement.barReaches ? judgement.bestClampMm : null,
        worstDeg: judgement.worst.altitudeDeg,
        worstNm: judgement.worst.torqueNm,
      },
    },
  };
}

/** The page lets nobody hand in a tube that is held or lies on the ground. */
function refusalOf(state: BalanceState): BenchRefusal | null {
  if (state.fallen)
    return {
      code: 'on-the-ground',
      message: 'The tube lies on the ground: put it back before you hand in your work.',
    };
  if (state.handOn)
    return {
      code: 'still-held',
      message: 'A hand is still on the tube: let go of it, so that it shows whether it holds.',
    };
  return null;
}
