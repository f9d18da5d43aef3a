import { afterAll } from '@/lib/balance/handle-tube';
import type { BalanceDraft } from '@/lib/grading/bench/balance/balance-submission';
import type { BalanceVariant } from '@/lib/variants/bench/balance/balance-variant';
import type { AnswerLine } from '../bench/bench-parts';
import { foresightQuestion } from './balance-task';
import { degText, mmText, movesWords, onInWords } from './balance-words';

/** An answer at "Balance" in words: for its student before it is sent, and for the teacher's answer key. */
export function balanceReview(draft: BalanceDraft, variant: BalanceVariant): readonly AnswerLine[] {
  const state = afterAll(variant, draft.actions);
  const trials = state.trials.filter((trial) => trial.arrangement === state.arrangement);
  return [
    ...(state.foreseen === null
      ? []
      : [{ asked: foresightQuestion(variant), answer: `${movesWords[state.foreseen]}.` }]),
    ...(variant.asksReading && draft.readingMm !== null
      ? [{ asked: 'Balance point', answer: mmText(draft.readingMm) }]
      : []),
    { asked: 'On the tube', answer: onInWords(variant, state.on) },
    {
      asked: 'How it was left',
      answer: `Clamp ${state.clampOpen ? 'open' : 'locked'} at ${mmText(state.clampMm)}, stop screw ${state.stopIn ? 'in' : 'out'}.`,
    },
    {
      asked: 'Let go of as it is now',
      answer:
        trials.length === 0
          ? 'not once'
          : trials
              .map(({ altitudeDeg, moves }) =>
                moves === 'holds'
                  ? `${degText(altitudeDeg)}: it holds`
                  : `${degText(altitudeDeg)}: the ${moves} sinks`,
              )
              .join('; '),
    },
  ];
}
