'use client';

import { useMemo } from 'react';
import { mostLevelActions, type LevelDraft } from '@/lib/grading/bench/level/level-submission';
import type { TripodState } from '@/lib/levelling/tripod';
import { act, logged, type TripodAction } from '@/lib/levelling/tripod-actions';
import type { LevelVariant } from '@/lib/variants/bench/level/level-variant';
import type { BenchViewProps } from '../bench/bench-parts';
import { happenedInWords, notPossibleWords } from './level-words';
import { stateOf } from './level-work';

export type LevelViewProps = BenchViewProps<LevelVariant, LevelDraft>;

export type TripodHand = {
  state: TripodState;
  /** Does it, or says why it cannot be done. `merge`: one of many moves of a drag. */
  act: (action: TripodAction, options?: { merge?: boolean }) => void;
};

/** The tripod as the work so far has left it, and the hands that go on with it. */
export function useTripodHand({ variant, draft, change }: LevelViewProps): TripodHand {
  const state = useMemo(() => stateOf(draft, variant), [draft, variant]);
  return {
    state,
    act: (action, options) => {
      const outcome = act(variant.site, state, action);
      if (!outcome.ok) {
        change(draft, notPossibleWords[outcome.reason]);
        return;
      }
      const actions = logged(draft.actions, action);
      if (actions.length > mostLevelActions) {
        change(draft, 'That is as much as one round records. Undo some of it, or hand it in.');
        return;
      }
      change(
        { ...draft, actions: [...actions] },
        happenedInWords(variant, state, outcome.state, action),
        options,
      );
    },
  };
}
