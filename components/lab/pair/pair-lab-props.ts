import type { ReactNode } from 'react';
import type { PairResult } from '@/lib/grading/pair-result';
import type { PairDraft, PairSubmission } from '@/lib/grading/pair-submission';
import type { SaveDraft } from '../shell/draft-saver';
import type { SubmitAnswer } from '../shell/submission-sender';
import type { PairLabSky } from './pair-lab-sky';

export type SubmitPair = SubmitAnswer<PairSubmission, PairResult>;

/** What the lab is given, by a page or by whoever waits for the stars. */
export type PairLabProps = {
  sky: PairLabSky;
  mode: 'practice' | 'check';
  /** Tells this attempt from others in the tab's storage: the attempt's id, or the round's address. */
  attemptKey: string;
  draft: PairDraft;
  /** The number the next saved draft carries. */
  nextSequence?: number;
  /** Left out where nothing is kept, as for a visitor. */
  onSave?: SaveDraft<PairDraft>;
  onSubmit: SubmitPair;
  /** How many of the three hints are offered; fewer as mastery grows. Practice only. */
  hintLevels?: number;
  /** In a practice for whom the figures have faded. */
  figuresOffered?: boolean;
  /** "Attempt 2 of 3 · due Friday" or the like, above the task. */
  about?: ReactNode;
  /** What stands below the result: another round, back to one's work. */
  afterwards?: ReactNode;
  /** What is said after sending when the result is withheld. */
  withheldText?: string;
};
