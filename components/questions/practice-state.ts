import type { ItemAnswer } from '@/lib/items/item-answer';
import type { ItemFeedback } from '@/lib/items/grade-item';
import type { ItemFace } from '@/lib/items/item-face';
import type { SkillStanding } from './skill-standing';

/** What a practice question's form shows after it was sent: the server's word, nothing worked out here. */
export type PracticeState = {
  /** How often something was sent; a new number is a new message even when the words are the same. */
  tries: number;
  /** Which question it was sent for. */
  questionKey: string;
  /** As the server read it, or as it counts; null when it could not be read. */
  answer: ItemAnswer | null;
  outcome: {
    /** Of the question that was answered: by now the page may have drawn the next. */
    face: ItemFace;
    feedback: ItemFeedback;
    /** Of a student; a visitor has none. */
    standing: SkillStanding | null;
    /** What this answer brought in that skill. */
    brought: 'mastery' | 'review' | null;
  } | null;
  /** Why an answer could not be marked. */
  refusal: string | null;
};

export const nothingSent: PracticeState = {
  tries: 0,
  questionKey: '',
  answer: null,
  outcome: null,
  refusal: null,
};

/** The server action behind a practice question. */
export type AnswerAction = (state: PracticeState, form: FormData) => Promise<PracticeState>;

/** What the fields of a practice question are called; there is one on its page. */
export const answerField = 'answer';
