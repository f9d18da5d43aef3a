import type { QuestionSubmission } from '../grading/questions/question-submission';
import { gradeItem } from '../items/grade-item';
import { rightAnswer, wrongAnswers } from '../items/answers-to-try';
import type { Item } from '../items/item';
import type { ItemAnswer } from '../items/item-answer';
import type { DemoSkill } from './demo-choice';

/** Which questions of four go wrong, by how well an invented student works; a poor one leaves one open. */
const slips: Readonly<Record<DemoSkill, readonly ('right' | 'wrong' | 'open')[]>> = {
  best: ['right'],
  middling: ['right', 'wrong', 'right', 'right'],
  poor: ['wrong', 'right', 'wrong', 'open'],
};

/** Answers to a set of that quality: the key, or the first of the wrong answers that a beginner gives. */
export const demoAnswers = (items: readonly Item[], skill: DemoSkill): QuestionSubmission => ({
  answers: items.map((item, index) => {
    const pattern = slips[skill];
    const way = pattern[index % pattern.length];
    if (way === 'open') return null;
    return way === 'wrong' ? wrongAnswer(item) : rightAnswer(item);
  }),
});

function wrongAnswer(item: Item): ItemAnswer {
  const poor = wrongAnswers(item).find((answer) => {
    const grading = gradeItem(item, answer);
    return grading.ok && grading.feedback.mark < 1;
  });
  return poor ?? rightAnswer(item);
}

/** The first three questions, and the rest still to do. */
export const demoAnswersBegun = (items: readonly Item[]): QuestionSubmission => ({
  answers: items.slice(0, 3).map(rightAnswer),
});
