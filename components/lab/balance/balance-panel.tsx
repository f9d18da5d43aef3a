'use client';

import { Notice } from '@/components/ui/notice';
import { RadioGroup } from '@/components/ui/radio-group';
import type { Moves } from '@/lib/balance/tube-bench';
import type { BalanceVariant } from '@/lib/variants/bench/balance/balance-variant';
import { foresightChoices, foresightQuestion, readingQuestion, taskInWords } from './balance-task';
import { movesWords, stateInWords } from './balance-words';
import { PartsList } from './parts-list';
import { ReadingField } from './reading-field';
import { useTubeHand, type BalanceViewProps, type TubeHand } from './use-tube-hand';

/** The task, what is expected, what is on the tube, and how it stands. */
export function BalancePanel(props: BalanceViewProps) {
  const { variant, draft, change } = props;
  const hand = useTubeHand(props);
  return (
    <div className="space-y-4">
      <p>{taskInWords(variant)}</p>
      {variant.asksForesight ? <Foresight variant={variant} {...hand} /> : null}
      <p className="border-s-4 border-accent ps-3 text-sm">{stateInWords(hand.state)}.</p>
      <PartsList variant={variant} {...hand} />
      {variant.asksReading ? (
        <ReadingField
          label={readingQuestion(variant)}
          hint={
            variant.weightsTold
              ? 'Worked out from masses and places, or found by trying.'
              : 'Halfway between the places where either end begins to sink.'
          }
          value={draft.readingMm}
          onChange={(readingMm) => {
            change({ ...draft, readingMm }, '', { merge: true });
          }}
        />
      ) : null}
      <Notice tone="caution" title="A loose tube slides out">
        With the clamp open only your hand keeps it. Bring it level, a hand under it, before you
        open the clamp; lock the clamp and turn the stop screw in before the hand leaves.
      </Notice>
    </div>
  );
}

/** Asked before the tube is touched; then it stands. */
function Foresight({ variant, state, act }: { variant: BalanceVariant } & TubeHand) {
  const touched = state.foreseen !== null && (state.arrangement > 0 || state.trials.length > 0);
  if (touched && state.foreseen !== null)
    return (
      <p className="text-sm">
        <span className="text-soft">You expected: </span>
        {movesWords[state.foreseen].toLowerCase()}.
      </p>
    );
  return (
    <RadioGroup<Moves | ''>
      name="foresight"
      legend={foresightQuestion(variant)}
      hint="Say it before you touch the tube."
      options={foresightChoices}
      value={state.foreseen ?? ''}
      onValueChange={(moves) => {
        if (moves !== '') act({ do: 'foresee', moves });
      }}
    />
  );
}
