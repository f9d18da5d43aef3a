import type { ItemDrawing } from '../drawings/drawing';
import type { Item } from './item';
import type { ItemAnswer } from './item-answer';
import { refused, type ItemRefusal, type Judged, type Judgement } from './judgement';
import { judgeChoice, judgeSeveral } from './judge-chosen';
import { judgeNumeric } from './judge-numeric';
import { judgeMatch, judgeOrder } from './judge-arranged';

/** Goes up whenever the same answer could earn another mark. */
export const itemGraderVersion = 1;

export type ItemFeedback = Judgement & {
  verdict: 'right' | 'near' | 'wrong';
  explanation: string;
  afterwards: ItemDrawing | null;
};

export type ItemGrading =
  { ok: true; feedback: ItemFeedback } | { ok: false; refusal: ItemRefusal };

/** Of a mark from 0 to 1. */
export const verdictOf = (mark: number): ItemFeedback['verdict'] =>
  mark === 1 ? 'right' : mark > 0 ? 'near' : 'wrong';

/** Marks one answer from the question alone, so that a regrade is a replay. Never throws on a parsed answer. */
export function gradeItem(item: Item, answer: ItemAnswer): ItemGrading {
  const judged = judge(item, answer);
  if (!judged.ok) return judged;
  const { mark } = judged.judgement;
  return {
    ok: true,
    feedback: {
      ...judged.judgement,
      verdict: verdictOf(mark),
      explanation: item.explanation,
      afterwards: item.afterwards ?? null,
    },
  };
}

function judge(item: Item, answer: ItemAnswer): Judged {
  switch (item.kind) {
    case 'choice':
      return answer.kind === 'choice'
        ? judgeChoice(item.options, item.key, answer.option)
        : otherQuestion;
    case 'point': {
      if (answer.kind !== 'point') return otherQuestion;
      const spots = item.spots.map((spot) => ({ ...spot, text: spot.where }));
      return judgeChoice(spots, item.key, answer.option);
    }
    case 'several':
      return answer.kind === 'several' ? judgeSeveral(item.options, answer.options) : otherQuestion;
    case 'order':
      return answer.kind === 'order' ? judgeOrder(item, answer.steps) : otherQuestion;
    case 'match':
      return answer.kind === 'match' ? judgeMatch(item, answer.pairs) : otherQuestion;
    case 'numeric':
      return answer.kind === 'numeric' ? judgeNumeric(item, answer.text) : otherQuestion;
  }
}

const otherQuestion = refused('other-question');
