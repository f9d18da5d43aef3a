import { rightAnswer } from '../items/answers-to-try';
import { shownMark } from '../grading/shown-mark';
import { gradeItem, verdictOf, type ItemFeedback } from '../items/grade-item';
import { itemAnswerSchema } from '../items/item-answer';
import type { Item } from '../items/item';
import { storedItemSchema } from './stored-item';

type KeptAnswer = {
  item: unknown;
  answer: unknown;
  /** 0–100, as it was given. */
  mark: number | null;
};

/**
 * What the answer that counts came to, from its row. The mark that was given stands, and with it the
 * verdict; the words are of today's marking, and where that would give another mark, they say so.
 * @throws for a question without an answer.
 */
export function feedbackOf({ item: stored, answer, mark }: KeptAnswer): ItemFeedback {
  if (mark === null) throw new Error('a question without an answer has no feedback');
  const item = storedItemSchema.parse(stored);
  const kept = mark / 100;
  const grading = gradeItem(item, itemAnswerSchema.parse(answer));
  if (!grading.ok) {
    return {
      ...feedbackOnKey(item),
      mark: kept,
      verdict: verdictOf(kept),
      said: [standsText(kept), 'Today’s marking cannot read this answer any more.'],
    };
  }
  const today = grading.feedback;
  // Marks that read alike are the same to whoever reads them: nothing is to be explained then.
  if (outOf100(today.mark) === outOf100(kept))
    return { ...today, mark: kept, verdict: verdictOf(kept) };
  return {
    ...today,
    mark: kept,
    verdict: verdictOf(kept),
    said: [
      standsText(kept),
      `Today’s marking gives ${outOf100(today.mark)} and says:`,
      ...today.said,
    ],
  };
}

const outOf100 = (mark: number): string => `${String(shownMark(100 * mark))} of 100`;
const standsText = (kept: number): string =>
  `An earlier marking gave ${outOf100(kept)}, and that mark stands.`;

function feedbackOnKey(item: Item): ItemFeedback {
  const grading = gradeItem(item, rightAnswer(item));
  if (!grading.ok) throw new Error('the key of a stored question can be marked');
  return grading.feedback;
}
