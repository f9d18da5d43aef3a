import type {
  LessonQuestionsResult,
  QuestionOutcome,
} from '@/lib/grading/questions/question-result';

/** Said in the place of feedback where there was nothing to mark. */
export const unmarkedWords: Readonly<Record<NonNullable<QuestionOutcome['notMarked']>, string>> = {
  'no-answer': 'There was no answer, which counts nothing.',
  unfinished: 'The answer was not finished, which counts nothing.',
  'not-a-number': 'The answer was no number in the unit asked for, which counts nothing.',
  'other-question': 'The answer belonged to another question, which counts nothing.',
};

/** The whole of it in one or two sentences. */
export function questionsVerdict({ items }: Pick<LessonQuestionsResult, 'items'>): string {
  const right = items.filter(({ mark }) => mark === 100).length;
  const partly = items.filter(({ mark }) => mark > 0 && mark < 100).length;
  const open = items.filter(({ notMarked }) => notMarked !== null).length;
  const all = items.length;
  const first =
    right === all
      ? `All ${String(all)} are right.`
      : `${String(right)} of ${String(all)} ${right === 1 ? 'is' : 'are'} right${partly === 0 ? '' : `, ${String(partly)} in part`}.`;
  const then =
    open > 0
      ? ` ${String(open)} had no answer that could be marked.`
      : right < all
        ? ' Below is what each of the others rests on.'
        : '';
  return first + then;
}
