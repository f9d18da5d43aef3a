import type { Metadata } from 'next';
import { runLabVariant } from '@/components/lab/run/run-lab-variant';
import { labTasks } from '@/lib/data/lab-tasks/lab-tasks';
import { addressOf, VisitorPage, type VisitorPageProps } from '../visitor-page';
import { gradeRound } from './actions';
import { VisitorRound } from './visitor-round';

const task = labTasks['alignment-run'];

export const metadata: Metadata = { title: task.title };

const lead =
  'Do it all, from the tube set level and north to the word of the mount: drive to a star, find it, centre it, confirm it, and once more. Then check on a third, and say whether you would trust it.';

export default function AlignmentRunPage({ searchParams }: VisitorPageProps) {
  return (
    <VisitorPage task={task} lead={lead} searchParams={searchParams}>
      {({ variant, placeName, ...round }, links) => (
        <VisitorRound
          {...links}
          variant={runLabVariant(variant, { placeName })}
          onSubmit={gradeRound.bind(null, addressOf(round))}
        />
      )}
    </VisitorPage>
  );
}
