'use client';

import { mostTurns } from '@/lib/finder/setting';
import { HandButton } from './eyepiece-controls';
import { finderHand, type FinderProps } from './finder-hand';
import { finderInWords, screwNames, turnsInWords } from './finder-words';

const stepsTurns = [-1, -0.25, -0.05, 0.05, 0.25, 1] as const;

/** One of the screws, turned by so much a press. */
export function ScrewSteps({ screw, ...props }: FinderProps & { screw: 0 | 1 }) {
  const { state, act } = finderHand(props);
  const turns = state.turns[screw];
  const name = screwNames[screw];
  const turn = (by: number) => () => {
    if (state.locked) {
      props.change(props.draft, 'The screws are locked. Loosen them first.');
      return;
    }
    const wanted = Math.round((turns + by) * 100) / 100;
    const toTurns = Math.min(mostTurns, Math.max(-mostTurns, wanted));
    act(
      { do: 'turn', screw, toTurns },
      (after) =>
        `${name}: ${turnsInWords(after.turns[screw])}. ${finderInWords(props.variant, after)}`,
    );
  };
  return (
    <div role="group" aria-label={name} className="flex flex-wrap items-center gap-2">
      <span className="w-44 text-sm">
        <strong className="font-semibold">{name}</strong>:{' '}
        {state.locked ? 'locked' : turnsInWords(turns)}
      </span>
      <span className="flex flex-wrap gap-1">
        {stepsTurns.map((by) => (
          <HandButton
            key={by}
            label={`${name} ${String(Math.abs(by))} of a turn to the ${by > 0 ? 'right' : 'left'}`}
            disabled={state.locked}
            onPress={turn(by)}
          >
            {by > 0 ? `+${String(by)}` : `−${String(-by)}`}
          </HandButton>
        ))}
      </span>
    </div>
  );
}
