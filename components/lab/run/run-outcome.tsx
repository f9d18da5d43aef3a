'use client';

import dynamic from 'next/dynamic';
import type { ReactNode } from 'react';
import { skyPictureStars } from '@/components/sky/sky-picture-stars';
import type { RunResult } from '@/lib/grading/run-result';
import type { StarCatalogue } from '@/lib/sky/catalogue';
import { LabOutcome } from '../shell/lab-outcome';
import type { RunLabVariant } from './run-lab-variant';

const RunResultView = dynamic(() =>
  import('@/components/grading/run/run-result-view').then((module) => module.RunResultView),
);

type RunOutcomeProps = {
  variant: RunLabVariant;
  catalogue: StarCatalogue;
  result: RunResult | null;
  late: boolean;
  withheldText: string | undefined;
  children: ReactNode;
};

/** What stands in the lab's place once the run has been taken. */
export function RunOutcome({ variant, catalogue, result, ...outcome }: RunOutcomeProps) {
  return (
    <LabOutcome
      {...outcome}
      title="Alignment run: how it came out"
      result={
        result === null ? null : (
          <RunResultView
            result={result}
            variant={variant}
            stars={skyPictureStars(catalogue, variant.frame)}
          />
        )
      }
    />
  );
}
