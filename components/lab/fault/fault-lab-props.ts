import type { ReactNode } from 'react';
import type { FaultResult } from '@/lib/grading/fault-result';
import type { FaultDraft, FaultSubmission } from '@/lib/grading/fault-submission';
import type { SaveDraft } from '../shell/draft-saver';
import type { SubmitAnswer } from '../shell/submission-sender';
import type { FaultView, WholeFaultView } from './fault-view';
import type { LookUp } from './look-asker';

/** What came of an answer, with all the evidence: the lab's page does not hold it. */
export type FaultDebrief = { result: FaultResult; variant: WholeFaultView };

export type SubmitFault = SubmitAnswer<FaultSubmission, FaultDebrief>;

/** What the lab is given by a page. */
export type FaultLabProps = {
  variant: FaultView;
  mode: 'practice' | 'check';
  /** Tells this attempt from others in the tab's storage: the attempt's id, or the round's address. */
  attemptKey: string;
  draft: FaultDraft;
  /** The number the next saved draft carries. */
  nextSequence?: number;
  /** Left out where nothing is kept, as for a visitor. */
  onSave?: SaveDraft<FaultDraft>;
  onSubmit: SubmitFault;
  onLook: LookUp;
  /** How many of the three hints are offered; fewer as mastery grows. Practice only. */
  hintLevels?: number;
  /** "Attempt 2 of 3 · due Friday" or the like, above the task. */
  about?: ReactNode;
  /** What stands below the result: another evening, back to one's work. */
  afterwards?: ReactNode;
  /** What is said after sending when the result is withheld. */
  withheldText?: string;
};
