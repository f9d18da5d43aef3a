import type { LessonSlug } from '../../course/lessons';
import type { Skill } from '../../course/skills';
import type { Item } from '../item';
import type { ItemFace } from '../item-face';

/** A set of questions as the student gets it: faces alone, so that nothing of it tells an answer. */
export type QuestionSet = {
  lab: 'lesson-questions';
  generatorVersion: number;
  /** The first of the lessons: an attempt is kept under one word. */
  template: LessonSlug;
  /** All lessons that it asks about. */
  lessons: readonly LessonSlug[];
  questions: readonly { lesson: LessonSlug; face: ItemFace }[];
};

/** The whole questions, in the order of the set's faces: a regrade replays them. */
export type QuestionSetKey = {
  lab: 'lesson-questions';
  items: readonly { skill: Skill; item: Item }[];
};
