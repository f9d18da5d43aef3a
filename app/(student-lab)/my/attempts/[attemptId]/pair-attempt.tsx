'use client';

import { PairLab } from '@/components/lab/pair/pair-lab';
import type { PairLabProps } from '@/components/lab/pair/pair-lab-props';
import { AttemptLab, type AttemptProps } from './attempt-lab';

/** An attempt at “Pick the pair”. */
export function PairAttempt({ save, send, resultAddress, ...lab }: AttemptProps<PairLabProps>) {
  const { attemptKey, nextSequence } = lab;
  return (
    <AttemptLab title="Pick the pair" {...{ attemptKey, nextSequence, save, send, resultAddress }}>
      {({ onSave, onSubmit }) => <PairLab {...lab} {...{ onSave, onSubmit }} />}
    </AttemptLab>
  );
}
