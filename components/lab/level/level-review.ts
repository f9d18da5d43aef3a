import type { LevelDraft } from '@/lib/grading/bench/level/level-submission';
import { legIndices } from '@/lib/levelling/tripod';
import type { LevelVariant } from '@/lib/variants/bench/level/level-variant';
import type { AnswerLine } from '../bench/bench-parts';
import { questionsOf, tiltSupposed } from './level-question';
import { bubbleInWords, legName } from './level-words';
import { stateOf } from './level-work';

const movesInWords = (moves: number): string =>
  moves === 0 ? 'no move' : moves === 1 ? 'one move' : `${String(moves)} moves`;

/** An answer at "Level" in words: for its student before it is sent, and for the teacher's answer key. */
export function levelReview(draft: LevelDraft, variant: LevelVariant): readonly AnswerLine[] {
  const state = stateOf(draft, variant);
  const trodden = draft.actions.flatMap((action) =>
    action.do === 'tread-in' ? [legName(action.leg)] : [],
  );
  return [
    {
      asked: 'Feet trodden in',
      answer: trodden.length === 0 ? 'none' : [...new Set(trodden)].sort().join(', '),
    },
    {
      asked: 'Legs as they were left',
      answer: `${legIndices
        .map((leg) => `${legName(leg)} ${String(state.legs[leg].lengthMm)} mm`)
        .join(', ')} after ${movesInWords(state.moves)}`,
    },
    {
      asked: state.tubeOn ? 'The bubble, with the tube on' : 'The bubble',
      answer: bubbleInWords(variant, state),
    },
    ...questionsOf(variant.question).map(({ name, legend, options }, index) => {
      const chosen = draft.answers[name];
      return {
        asked: index === 0 ? `${tiltSupposed(variant.question)} ${legend}` : legend,
        answer: (chosen === null ? undefined : options[chosen]) ?? 'not answered',
      };
    }),
  ];
}
