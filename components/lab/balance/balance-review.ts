import type { BalanceDraft } from '@/lib/grading/bench/balance-submission';
import type { BalanceVariant } from '@/lib/variants/bench/balance-variant';
import type { AnswerLine } from '../bench/bench-parts';

/** An answer at "Balance" in words: for its student before it is sent, and for the teacher's answer key. */
export function balanceReview(
  _draft: BalanceDraft,
  _variant: BalanceVariant,
): readonly AnswerLine[] {
  return [];
}
