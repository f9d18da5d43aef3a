import type { ReactNode } from 'react';
import type { LessonQuestionsResult } from '@/lib/grading/questions/question-result';
import type { QuestionSubmission } from '@/lib/grading/questions/question-submission';
import type { QuestionSet } from '@/lib/items/question-set/question-set';
import type { SaveDraft } from '../shell/draft-saver';
import type { SubmitAnswer } from '../shell/submission-sender';

export type QuestionSetProps = {
  set: QuestionSet;
  mode: 'practice' | 'check';
  /** Tells this attempt from others in the tab's storage. */
  attemptKey: string;
  draft: QuestionSubmission;
  /** The number the next saved draft carries. */
  nextSequence: number;
  onSave: SaveDraft<QuestionSubmission>;
  onSubmit: SubmitAnswer<QuestionSubmission, LessonQuestionsResult>;
  /** "Attempt 2 of 3 · due Friday" or the like. */
  about: ReactNode;
  /** What stands below the result. */
  afterwards: ReactNode;
  /** What is said after sending when the result is withheld. */
  withheldText?: string;
};
