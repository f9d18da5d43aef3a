import 'server-only';
import { loadItemWorld } from '../../content/item-world';
import { course } from '../../course/lessons';
import {
  gradeQuestions,
  questionsGraderVersion,
  rightInWords,
} from '../../grading/questions/grade-questions';
import {
  nothingAnswered,
  questionSubmissionSchema,
} from '../../grading/questions/question-submission';
import { faceOfItem } from '../../items/item-face';
import { familiesOf } from '../../items/item-bank';
import { generateQuestionSet } from '../../items/question-set/generate-question-set';
import { failure } from '../result';
import { defineLabTask } from './lab-task';
import { stillOpen } from './still-open';
import { questionResultSchema, questionSetKeySchema, questionSetSchema } from './stored-questions';

/** When the rules change, the old grader stays here under its version: a regrade is a replay. */
const graders: ReadonlyMap<number, typeof gradeQuestions> = new Map([
  [questionsGraderVersion, gradeQuestions],
]);

export const lessonQuestions = defineLabTask({
  lab: 'lesson-questions',
  title: 'Questions on lessons',
  templates: course.map(({ slug }) => slug),
  variantSchema: questionSetSchema,
  answerKeySchema: questionSetKeySchema,
  draftSchema: questionSubmissionSchema,
  emptyDraft: nothingAnswered,
  submissionSchema: questionSubmissionSchema,
  resultSchema: questionResultSchema,
  keepsLatestDraftOnly: true,
  longestJson: 20_000,
  graderVersion: questionsGraderVersion,

  make: ({ seed, templates }) =>
    generateQuestionSet({ seed, lessons: templates, familiesOf, world: loadItemWorld() }),

  grade(graderVersion, work) {
    const grader = graders.get(graderVersion);
    if (grader === undefined) throw new Error(`there is no grader of version ${graderVersion}`);
    const grading = grader(work);
    return grading.ok
      ? grading
      : failure(
          grading.refusal.code,
          `These are answers to other questions. Load the page again. ${stillOpen}`,
        );
  },

  /** Each question as it is asked, with its right answer and how one gets there. */
  sample: ({ answerKey: { items } }) =>
    items.map(({ skill, item }) => ({
      family: item.family,
      skill,
      face: faceOfItem(item),
      right: rightInWords(item),
      explanation: item.explanation,
    })),
});
