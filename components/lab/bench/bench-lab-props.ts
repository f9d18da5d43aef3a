import type { ReactNode } from 'react';
import type { AnyBenchResult } from '@/lib/grading/bench/any-bench-result';
import type { SaveDraft } from '../shell/draft-saver';
import type { SubmitAnswer } from '../shell/submission-sender';

/** What a bench lab is given by a page, beside its task. */
export type BenchSession = {
  mode: 'practice' | 'check';
  /** Tells this attempt from others in the tab's storage: the attempt's id, or the round's address. */
  attemptKey: string;
  /** The work so far as it was stored; the lab reads it. Null: not begun. */
  draft: unknown;
  /** The number the next saved draft carries. */
  nextSequence?: number;
  /** Left out where nothing is kept, as for a visitor. */
  onSave?: SaveDraft<unknown>;
  onSubmit: SubmitAnswer<unknown, AnyBenchResult>;
  /** How many of the hints are offered; fewer as mastery grows. Practice only. */
  hintLevels?: number;
  /** "Attempt 2 of 3 · due Friday" or the like, above the task. */
  about?: ReactNode;
  /** What stands below the result: another round, back to one's work. */
  afterwards?: ReactNode;
  /** What is said after sending when the result is withheld. */
  withheldText?: string;
};

export type BenchLabProps<V> = BenchSession & { variant: V };
