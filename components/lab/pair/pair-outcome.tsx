'use client';

import dynamic from 'next/dynamic';
import type { ReactNode } from 'react';
import { skyPictureStars } from '@/components/sky/sky-picture-stars';
import type { PairResult } from '@/lib/grading/pair-result';
import type { StarCatalogue } from '@/lib/sky/catalogue';
import { LabOutcome } from '../shell/lab-outcome';
import type { PairLabSky } from './pair-lab-sky';

const PairResultView = dynamic(() =>
  import('@/components/grading/pair/pair-result-view').then((module) => module.PairResultView),
);

type PairOutcomeProps = {
  sky: PairLabSky;
  catalogue: StarCatalogue;
  result: PairResult | null;
  late: boolean;
  withheldText: string | undefined;
  children: ReactNode;
};

/** What stands in the lab's place once the answer has been taken. */
export function PairOutcome({ sky, catalogue, result, ...outcome }: PairOutcomeProps) {
  return (
    <LabOutcome
      {...outcome}
      title="Pick the pair: how it came out"
      result={
        result === null ? null : (
          <PairResultView result={result} sky={sky} stars={skyPictureStars(catalogue, sky.frame)} />
        )
      }
    />
  );
}
