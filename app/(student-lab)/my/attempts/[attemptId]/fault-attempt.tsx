'use client';

import { FaultLab } from '@/components/lab/fault/fault-lab';
import type { FaultLabProps } from '@/components/lab/fault/fault-lab-props';
import { AttemptLab, type AttemptProps } from './attempt-lab';

type FaultAttemptProps = Omit<AttemptProps<FaultLabProps>, 'onLook'> & {
  lookUp: FaultLabProps['onLook'];
};

/** An attempt at “What went wrong?”. */
export function FaultAttempt({ save, send, lookUp, resultAddress, ...lab }: FaultAttemptProps) {
  const { attemptKey, nextSequence } = lab;
  return (
    <AttemptLab
      title="What went wrong?"
      {...{ attemptKey, nextSequence, save, send, resultAddress }}
    >
      {({ watch, ...watchedOver }) => (
        <FaultLab {...lab} {...watchedOver} onLook={(ask) => watch(lookUp(ask))} />
      )}
    </AttemptLab>
  );
}
