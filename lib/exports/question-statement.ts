import {
  activity,
  actor,
  language,
  verbs,
  type Statement,
  type StatementSource,
} from './statement';

/** A question of a lesson's practice that was answered. */
export type ExportedQuestion = {
  id: string;
  studentId: string;
  /** Empty where names are left out. */
  name: string;
  lesson: string;
  lessonTitle: string;
  /** What it is about, and the kind of question: no two students are asked quite the same. */
  family: string;
  familyTitle: string;
  template: string;
  /** Counts from 1 per student and lesson. */
  number: number;
  /** 0–100, not rounded. */
  mark: number;
  graderVersion: number;
  answeredAt: Date;
};

/**
 * That a student answered, and how far it was right; not what was answered. It is practice, which has no
 * pass mark, and so no success. What is told of it names it: marked again it is another statement (2.3).
 */
export function statementOfQuestion(
  question: ExportedQuestion,
  { homePage, uuidOf }: StatementSource,
): Statement {
  const { id, family, template, lesson, mark, graderVersion } = question;
  return {
    id: uuidOf(`question ${id} answered ${String(graderVersion)} ${String(mark)}`),
    actor: actor(question, homePage),
    verb: { id: verbs.answered, display: { [language]: 'answered' } },
    object: activity(
      `${homePage}/questions/${family}/${template}`,
      question.familyTitle,
      'question',
    ),
    result: { score: { scaled: mark / 100, raw: mark, min: 0, max: 100 }, completion: true },
    context: {
      registration: uuidOf(`question ${id}`),
      platform: 'Duskbench',
      language,
      contextActivities: {
        parent: [activity(`${homePage}/lessons/${lesson}`, question.lessonTitle, 'lesson')],
      },
      extensions: {
        [`${homePage}/terms/mode`]: 'practice',
        [`${homePage}/terms/question-number`]: question.number,
      },
    },
    timestamp: question.answeredAt.toISOString(),
  };
}
