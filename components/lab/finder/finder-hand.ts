'use client';

import type { SettingAction, SettingState } from '@/lib/finder/setting';
import type { FinderDraft } from '@/lib/grading/bench/finder/finder-submission';
import type { FinderVariant } from '@/lib/variants/bench/finder/finder-variant';
import type { BenchViewProps } from '../bench/bench-parts';
import { afterDoing, aimsNow, stateOf } from './finder-work';
import { eyepieceInWords, finderInWords, hazardInWords } from './finder-words';

export type FinderProps = BenchViewProps<FinderVariant, FinderDraft>;

export type FinderHand = {
  state: SettingState;
  /** Does one thing; `say` tells of it in words, by how things stand then. */
  act: (
    action: SettingAction,
    say?: (state: SettingState) => string,
    options?: { merge?: boolean },
  ) => void;
};

/** The setting as it stands, and the hand that does one more thing to it. */
export function finderHand({ variant, draft, mode, change }: FinderProps): FinderHand {
  return {
    state: stateOf(variant, draft),
    act: (action, say, options) => {
      const done = afterDoing(variant, draft, action);
      if (!done.ok) {
        change(
          draft,
          done.reason === 'too-many'
            ? 'That is more moves than anybody needs. Hand it in, or start afresh.'
            : 'That cannot be done now.',
        );
        return;
      }
      const { state, newHazards } = done;
      // In a check the result tells: a warning at once would do the looking for them.
      const warned = mode === 'practice' ? newHazards.map((hazard) => hazardInWords(hazard)) : [];
      const said = say === undefined ? viewsInWords(variant, state) : say(state);
      change(
        done.draft,
        [...warned.map(({ title }) => `Stop: ${title}.`), said].join(' '),
        options,
      );
    },
  };
}

/** What is to be seen now in the eyepiece and beside the dot. */
export const viewsInWords = (variant: FinderVariant, state: SettingState): string =>
  state.capsOn
    ? 'The caps are on.'
    : `${eyepieceInWords(variant, state, aimsNow(variant, state))} ${finderInWords(variant, state)}`;
