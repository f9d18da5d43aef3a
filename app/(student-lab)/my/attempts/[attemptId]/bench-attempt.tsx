'use client';

import { BenchLab } from '@/components/lab/bench/bench-lab';
import type { BenchLabProps } from '@/components/lab/bench/bench-lab-props';
import type { AnyBenchResult } from '@/lib/grading/bench/any-bench-result';
import type { AnyBenchVariant } from '@/lib/variants/bench/bench-labs';
import { AttemptLab, type AttemptProps } from './attempt-lab';

type BenchAttemptProps = AttemptProps<BenchLabProps<AnyBenchVariant>> & { title: string };

/** An attempt at a bench lab, whichever it is. */
export function BenchAttempt({ save, send, resultAddress, title, ...lab }: BenchAttemptProps) {
  const { attemptKey, nextSequence } = lab;
  return (
    <AttemptLab<unknown, unknown, AnyBenchResult>
      {...{ title, attemptKey, nextSequence, save, send, resultAddress }}
    >
      {({ onSave, onSubmit }) => <BenchLab {...lab} {...{ onSave, onSubmit }} />}
    </AttemptLab>
  );
}
