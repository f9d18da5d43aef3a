'use client';

import { FaultLab } from '@/components/lab/fault/fault-lab';
import type { FaultLabProps } from '@/components/lab/fault/fault-lab-props';
import { AttemptLab, type AttemptProps } from './attempt-lab';

/** An attempt at “What went wrong?”. */
export function FaultAttempt({ save, send, resultAddress, ...lab }: AttemptProps<FaultLabProps>) {
  const { attemptKey } = lab;
  return (
    <AttemptLab title="What went wrong?" {...{ attemptKey, save, send, resultAddress }}>
      {(watchedOver) => <FaultLab {...lab} {...watchedOver} />}
    </AttemptLab>
  );
}
