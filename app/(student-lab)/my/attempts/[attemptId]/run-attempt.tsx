'use client';

import type { ReactNode } from 'react';
import type { SaveDraft } from '@/components/lab/shell/draft-saver';
import type { SubmitAnswer } from '@/components/lab/shell/submission-sender';
import type { RunLabVariant } from '@/components/lab/run/run-lab-variant';
import type { RunResult } from '@/lib/grading/run-result';
import type { RunDraft, RunSubmission } from '@/lib/grading/run-submission';
import type { AttemptProps } from './attempt-lab';

type RunLabProps = {
  variant: RunLabVariant;
  mode: 'practice' | 'check';
  attemptKey: string;
  draft: RunDraft;
  nextSequence?: number;
  onSave?: SaveDraft<RunDraft>;
  onSubmit: SubmitAnswer<RunSubmission, RunResult>;
  about?: ReactNode;
  afterwards?: ReactNode;
};

/** An attempt at “Alignment run”; the lab itself takes this place. */
export function RunAttempt({ variant, about, afterwards }: AttemptProps<RunLabProps>) {
  return (
    <div className="px-4 py-8 sm:px-6">
      <h1 className="text-3xl">Alignment run</h1>
      <p>
        {about} {variant.placeName}, {variant.localTimeText}
      </p>
      {afterwards}
    </div>
  );
}
