import type { Metadata } from 'next';
import { faultView } from '@/components/lab/fault/fault-view';
import { loadCatalogue } from '@/lib/content/sky-catalogue';
import { labTasks } from '@/lib/data/lab-tasks/lab-tasks';
import { addressOf, VisitorPage, type VisitorPageProps } from '../visitor-page';
import { gradeRound, lookInRound } from './actions';
import { VisitorRound } from './visitor-round';

const task = labTasks['what-went-wrong'];

export const metadata: Metadata = { title: task.title };

const lead =
  'An evening went wrong. Read where the telescope pointed and what the alignment said, look up what you need, and name the fault and its cure.';

export default function WhatWentWrongPage({ searchParams }: VisitorPageProps) {
  return (
    <VisitorPage task={task} lead={lead} searchParams={searchParams}>
      {({ variant, placeName, ...round }, links) => (
        <VisitorRound
          {...links}
          variant={faultView(variant, { placeName, catalogue: loadCatalogue() })}
          onSubmit={gradeRound.bind(null, addressOf(round))}
          onLook={lookInRound.bind(null, addressOf(round))}
        />
      )}
    </VisitorPage>
  );
}
