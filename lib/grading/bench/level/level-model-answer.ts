import { fewestMoves, type Levelling } from '../../../levelling/fewest-moves';
import { legIndices, type LegIndex } from '../../../levelling/tripod';
import { replay, type TripodAction } from '../../../levelling/tripod-actions';
import { settled } from '../../../variants/bench/level/draw-tripod-site';
import type { LevelVariant } from '../../../variants/bench/level/level-variant';
import { rightAnswers } from './level-answers';
import { firstMove } from './level-first-move';
import type { LevelSubmission } from './level-submission';

/** What an operator who makes no mistake hands in. */
export function levelModelAnswer({ site, question }: LevelVariant): LevelSubmission {
  const before: TripodAction[] = [
    ...legIndices
      .filter((leg) => site.legs[leg].sinksMm > 0)
      .map((leg): TripodAction => ({ do: 'tread-in', leg })),
    // Half a turn and back: what the bubble does in between is the vial's own.
    ...(site.armTurns ? ([{ do: 'turn-arm' }, { do: 'turn-arm' }] as const) : []),
  ];
  for (const levelling of fewestMoves(site, settled(site))) {
    for (const legs of orders(levelling.legs)) {
      const actions = [...before, ...carriedOut(levelling, legs), { do: 'tube-on' as const }];
      const states = replay(site, actions);
      if (states !== null && firstMove(site, actions, states)?.judgement === 'best')
        return { actions, answers: rightAnswers(question) };
    }
  }
  throw new Error('a task of "Level" can be done with its best leg first');
}

const carriedOut = ({ lengthsMm }: Levelling, legs: readonly LegIndex[]): readonly TripodAction[] =>
  legs.flatMap((leg): TripodAction[] => [
    { do: 'open', leg },
    { do: 'slide', leg, toMm: lengthsMm[leg] },
    { do: 'lock', leg },
  ]);

/** Each leg may be the first; of three the other two keep their order. */
const orders = (legs: readonly LegIndex[]): LegIndex[][] =>
  legs.map((first) => [first, ...legs.filter((leg) => leg !== first)]);
