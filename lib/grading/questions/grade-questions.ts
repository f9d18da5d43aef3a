import { gradeItem, type ItemFeedback } from '../../items/grade-item';
import { rightAnswer } from '../../items/answers-to-try';
import type { Item } from '../../items/item';
import type { ItemAnswer } from '../../items/item-answer';
import type { QuestionSet, QuestionSetKey } from '../../items/question-set/question-set';
import type { LessonQuestionsResult, QuestionOutcome } from './question-result';
import type { QuestionSubmission } from './question-submission';
import { withoutNoise } from '../counted-mark';

/** Goes up with {@link itemGraderVersion}, and whenever a set's marks are put together otherwise. */
export const questionsGraderVersion = 1;

type Grading =
  { ok: true; result: LessonQuestionsResult } | { ok: false; refusal: { code: 'other-questions' } };

/** The mean of the questions' own marks; what was not answered is worth nothing. */
export function gradeQuestions(work: {
  variant: Pick<QuestionSet, 'template'>;
  answerKey: QuestionSetKey;
  submission: QuestionSubmission;
}): Grading {
  const { variant, answerKey, submission } = work;
  if (submission.answers.length > answerKey.items.length) {
    return { ok: false, refusal: { code: 'other-questions' } };
  }
  const items = answerKey.items.map(({ skill, item }, index): QuestionOutcome => ({
    family: item.family,
    template: item.template,
    skill,
    ...outcomeOf(item, submission.answers[index] ?? null),
  }));
  return {
    ok: true,
    result: {
      lab: 'lesson-questions',
      graderVersion: questionsGraderVersion,
      template: variant.template,
      total: withoutNoise(items.reduce((sum, { mark }) => sum + mark, 0) / items.length),
      items,
      gates: [],
    },
  };
}

function outcomeOf(item: Item, answer: ItemAnswer | null) {
  const grading =
    answer === null
      ? ({ ok: false, refusal: { code: 'no-answer' } } as const)
      : gradeItem(item, answer);
  return grading.ok
    ? { mark: 100 * grading.feedback.mark, answer, notMarked: null, feedback: grading.feedback }
    : { mark: 0, answer, notMarked: grading.refusal.code, feedback: unanswered(item) };
}

/** What is right, for whoever did not answer. */
export function unanswered(item: Item): ItemFeedback {
  const { explanation, afterwards } = item;
  return {
    mark: 0,
    verdict: 'wrong',
    said: [],
    misconceptions: [],
    right: rightInWords(item),
    explanation,
    afterwards: afterwards ?? null,
  };
}

/** The right answer in words; @throws for a question whose key cannot be marked, which is a bug of its family. */
export function rightInWords(item: Item): string {
  const grading = gradeItem(item, rightAnswer(item));
  if (!grading.ok) throw new Error(`${item.family}/${item.template} cannot mark its own key`);
  return grading.feedback.right;
}
