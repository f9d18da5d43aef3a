'use client';

import dynamic from 'next/dynamic';
import type { ReactNode } from 'react';
import type { FaultResult } from '@/lib/grading/fault-result';
import { LabOutcome } from '../shell/lab-outcome';
import type { FaultView } from './fault-view';

const FaultResultView = dynamic(() =>
  import('@/components/grading/fault-result-view').then((module) => module.FaultResultView),
);

type FaultOutcomeProps = {
  variant: FaultView;
  result: FaultResult | null;
  late: boolean;
  withheldText: string | undefined;
  children: ReactNode;
};

/** What stands in the lab's place once the answer has been taken. */
export function FaultOutcome({ variant, result, ...outcome }: FaultOutcomeProps) {
  return (
    <LabOutcome
      {...outcome}
      title="What went wrong? How it came out"
      result={result === null ? null : <FaultResultView variant={variant} result={result} />}
    />
  );
}
