import type { Metadata } from 'next';
import { pairLabSky } from '@/components/lab/pair/pair-lab-sky';
import { labTasks } from '@/lib/data/lab-tasks/lab-tasks';
import { addressOf, VisitorPage, type VisitorPageProps } from '../visitor-page';
import { gradeRound } from './actions';
import { VisitorRound } from './visitor-round';

const task = labTasks['pick-the-pair'];

export const metadata: Metadata = { title: task.title };

const lead =
  'A telescope that finds its own targets must first be shown two stars. Which two decides how well it points for the rest of the night. Here you choose them under a real sky, and see what they are worth.';

export default function PickThePairPage({ searchParams }: VisitorPageProps) {
  return (
    <VisitorPage task={task} lead={lead} searchParams={searchParams}>
      {({ variant, kitName, placeName, ...round }, links) => (
        <VisitorRound
          {...links}
          sky={pairLabSky(variant, { kitName, placeName })}
          onSubmit={gradeRound.bind(null, addressOf(round))}
        />
      )}
    </VisitorPage>
  );
}
