import type { CheckFeedback } from './grade-check-item';

/** What a question's form shows after an answer: the server's word, nothing worked out here. */
export type CheckState = {
  /** How often an answer was sent; a new number is a new message even when the words are the same. */
  tries: number;
  answer: string;
  feedback: CheckFeedback | null;
  /** Why an answer could not be looked at. */
  refusal: string | null;
};

/** The server action behind every question. It stores nothing. */
export type AnswerCheck = (state: CheckState, form: FormData) => Promise<CheckState>;
