import { benchTexts } from '@/components/lab/bench/bench-texts';
import { labTasks } from '@/lib/data/lab-tasks/lab-tasks';
import type { AnyBenchVariant, BenchLab } from '@/lib/variants/bench/bench-labs';
import { addressOf, VisitorPage, type VisitorPageProps } from '../visitor-page';
import { gradeRound } from './actions';
import { VisitorRound } from './visitor-round';

/** A round of any bench lab, or the form that makes one. */
export function BenchPage({ lab, searchParams }: VisitorPageProps & { lab: BenchLab }) {
  return (
    <VisitorPage<AnyBenchVariant>
      task={labTasks[lab]}
      lead={benchTexts[lab].lead}
      searchParams={searchParams}
    >
      {({ variant, ...round }, links) => (
        <VisitorRound
          {...links}
          variant={variant}
          onSubmit={gradeRound.bind(null, lab, addressOf(round))}
        />
      )}
    </VisitorPage>
  );
}
