import type { ReactNode } from 'react';
import type { RunResult } from '@/lib/grading/run-result';
import type { RunDraft, RunSubmission } from '@/lib/grading/run-submission';
import type { SaveDraft } from '../shell/draft-saver';
import type { SubmitAnswer } from '../shell/submission-sender';
import type { RunLabVariant } from './run-lab-variant';

export type SubmitRun = SubmitAnswer<RunSubmission, RunResult>;

/** What the lab is given, by a page or by whoever waits for the stars. */
export type RunLabProps = {
  variant: RunLabVariant;
  mode: 'practice' | 'check';
  /** Tells this attempt from others in the tab's storage: the attempt's id, or the round's address. */
  attemptKey: string;
  draft: RunDraft;
  /** The number the next saved draft carries. */
  nextSequence?: number;
  /** Left out where nothing is kept, as for a visitor. */
  onSave?: SaveDraft<RunDraft>;
  onSubmit: SubmitRun;
  /** How many hints are offered at each step; fewer as mastery grows. Practice only. */
  hintLevels?: number;
  /** "Attempt 2 of 3 · due Friday" or the like, above the task. */
  about?: ReactNode;
  /** What stands below the result: another round, back to one's work. */
  afterwards?: ReactNode;
  /** What is said after sending when the result is withheld. */
  withheldText?: string;
};
