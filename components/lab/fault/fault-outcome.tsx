'use client';

import dynamic from 'next/dynamic';
import type { ReactNode } from 'react';
import { LabOutcome } from '../shell/lab-outcome';
import type { FaultDebrief } from './fault-lab-props';

const FaultResultView = dynamic(() =>
  import('@/components/grading/fault/fault-result-view').then((module) => module.FaultResultView),
);

type FaultOutcomeProps = {
  debrief: FaultDebrief | null;
  late: boolean;
  withheldText: string | undefined;
  children: ReactNode;
};

/** What stands in the lab's place once the answer has been taken. */
export function FaultOutcome({ debrief, ...outcome }: FaultOutcomeProps) {
  return (
    <LabOutcome
      {...outcome}
      title="What went wrong? How it came out"
      result={debrief === null ? null : <FaultResultView {...debrief} />}
    />
  );
}
