import type { LessonSlug } from '../../course/lessons';
import type { Skill } from '../../course/skills';
import type { ItemFeedback } from '../../items/grade-item';
import type { ItemAnswer } from '../../items/item-answer';
import type { ItemRefusal } from '../../items/judgement';

/** What one question of a set came to. */
export type QuestionOutcome = {
  family: string;
  template: string;
  skill: Skill;
  /** 0–100, not rounded. */
  mark: number;
  answer: ItemAnswer | null;
  /** Why the answer could not be marked; null when it was. It is worth nothing then. */
  notMarked: ItemRefusal['code'] | null;
  /** Of an answer that could not be marked: what is right and why. */
  feedback: ItemFeedback;
};

export type LessonQuestionsResult = {
  lab: 'lesson-questions';
  graderVersion: number;
  template: LessonSlug;
  /** 0–100: the mean over all questions, answered or not. */
  total: number;
  items: readonly QuestionOutcome[];
  /** A question can hurt nobody. */
  gates: readonly never[];
};
