'use client';

import { useMemo } from 'react';
import { afterAll, handleTube } from '@/lib/balance/handle-tube';
import type { BalanceAction, BalanceState } from '@/lib/balance/tube-bench';
import {
  mostBalanceActions,
  type BalanceDraft,
} from '@/lib/grading/bench/balance/balance-submission';
import type { BalanceVariant } from '@/lib/variants/bench/balance/balance-variant';
import type { BenchViewProps } from '../bench/bench-parts';
import { happenedInWords, refusalWords } from './balance-words';

export type BalanceViewProps = BenchViewProps<BalanceVariant, BalanceDraft>;

export type TubeHand = {
  state: BalanceState;
  /** Does it, or says why it cannot be done. `merge`: one of many moves of a drag. */
  act: (action: BalanceAction, options?: { merge?: boolean }) => void;
};

/** These say where something is now: of several in a row only the last matters. */
const lastCounts: readonly BalanceAction['do'][] = ['slide', 'tip', 'foresee'];

/** The work so far, and one thing more done to the tube. */
function withAction(draft: BalanceDraft, action: BalanceAction): BalanceDraft {
  const again = lastCounts.includes(action.do) && draft.actions.at(-1)?.do === action.do;
  return {
    ...draft,
    actions: [...(again ? draft.actions.slice(0, -1) : draft.actions), action],
  };
}

/** The tube as the work so far has left it, and the hand that goes on with it. */
export function useTubeHand({ variant, draft, change }: BalanceViewProps): TubeHand {
  const state = useMemo(() => afterAll(variant, draft.actions), [variant, draft.actions]);
  return {
    state,
    act: (action, options) => {
      const handled = handleTube(variant, state, action);
      if (!handled.ok) {
        change(draft, refusalWords[handled.why]);
        return;
      }
      const next = withAction(draft, action);
      if (next.actions.length > mostBalanceActions) {
        change(draft, 'That is as much as one round records. Undo some of it, or hand it in.');
        return;
      }
      change(next, happenedInWords(variant, state, handled.state, action), options);
    },
  };
}
