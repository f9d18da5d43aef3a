'use client';

import { RunLab } from '@/components/lab/run/run-lab';
import type { RunLabProps } from '@/components/lab/run/run-lab-props';
import { AttemptLab, type AttemptProps } from './attempt-lab';

/** An attempt at “Alignment run”. */
export function RunAttempt({ save, send, resultAddress, ...lab }: AttemptProps<RunLabProps>) {
  const { attemptKey, nextSequence } = lab;
  return (
    <AttemptLab title="Alignment run" {...{ attemptKey, nextSequence, save, send, resultAddress }}>
      {({ onSave, onSubmit }) => <RunLab {...lab} {...{ onSave, onSubmit }} />}
    </AttemptLab>
  );
}
