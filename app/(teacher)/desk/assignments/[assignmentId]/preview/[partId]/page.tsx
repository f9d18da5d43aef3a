import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import type { ReactNode } from 'react';
import { BenchLab } from '@/components/lab/bench/bench-lab';
import { FaultLab } from '@/components/lab/fault/fault-lab';
import { faultView } from '@/components/lab/fault/fault-view';
import { PairLab } from '@/components/lab/pair/pair-lab';
import { pairLabSky } from '@/components/lab/pair/pair-lab-sky';
import { QuestionSetLab } from '@/components/lab/questions/question-set-lab';
import { RunLab } from '@/components/lab/run/run-lab';
import { runLabVariant } from '@/components/lab/run/run-lab-variant';
import { LinkButton } from '@/components/ui/link-button';
import { getViewer } from '@/lib/auth/session';
import { loadCatalogue, loadKits } from '@/lib/content/sky-catalogue';
import {
  getPreviewTask,
  type PreviewAddress,
  type PreviewTask,
} from '@/lib/data/assignment-preview';
import { routes } from '@/lib/routes';
import {
  keepNothing,
  lookInTriedFault,
  tryBench,
  tryFault,
  tryPair,
  tryQuestions,
  tryRun,
} from './actions';

export const metadata: Metadata = { title: 'Try a part' };

type PartPreviewProps = {
  params: Promise<{ assignmentId: string; partId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
};

/** A part's task to be done by a teacher, as a student does it. The address holds the round; nothing is kept. */
export default async function PartPreviewPage({ params, searchParams }: PartPreviewProps) {
  const { assignmentId, partId } = await params;
  const { round } = await searchParams;
  const number = typeof round === 'string' && /^\d{1,4}$/.test(round) ? Number(round) : 1;
  const address = { assignmentId, partId, round: String(number) };
  const task = await getPreviewTask(await getViewer(), address);
  if (task === null) notFound();
  const afterwards = (
    <>
      <LinkButton
        href={routes.teacher.partPreview(assignmentId, partId, { round: number + 1 })}
        variant="primary"
      >
        Another task
      </LinkButton>
      <LinkButton href={routes.teacher.assignmentPreview(assignmentId)}>
        Back to the preview
      </LinkButton>
    </>
  );
  return (
    <div className="-mx-4 -mt-6 -mb-16 sm:-mx-6 sm:-mt-8">
      <LabOfTask key={`${partId} ${address.round}`} {...{ task, address, afterwards }} />
    </div>
  );
}

function LabOfTask({
  task,
  address,
  afterwards,
}: {
  task: PreviewTask;
  address: PreviewAddress;
  afterwards: ReactNode;
}) {
  const { placeName, kitId } = task;
  const shared = {
    // As a check, so that no hints are there that a student does not have.
    mode: 'check' as const,
    attemptKey: `preview ${address.partId} ${address.round}`,
    about: `A look at “${task.title}”: nothing is kept.`,
    afterwards,
  };
  switch (task.lab) {
    case 'pick-the-pair': {
      const kitName = loadKits().find(({ id }) => id === kitId)?.name ?? 'your telescope';
      return (
        <PairLab
          {...shared}
          sky={pairLabSky(task.variant, { kitName, placeName })}
          draft={task.draft}
          onSubmit={tryPair.bind(null, address)}
        />
      );
    }
    case 'alignment-run':
      return (
        <RunLab
          {...shared}
          variant={runLabVariant(task.variant, { placeName })}
          draft={task.draft}
          onSubmit={tryRun.bind(null, address)}
        />
      );
    case 'what-went-wrong':
      return (
        <FaultLab
          {...shared}
          variant={faultView(task.variant, {
            placeName,
            catalogue: loadCatalogue(),
            seen: task.draft,
          })}
          draft={task.draft}
          onSubmit={tryFault.bind(null, address)}
          onLook={lookInTriedFault.bind(null, address)}
        />
      );
    case 'lesson-questions':
      return (
        <QuestionSetLab
          {...shared}
          set={task.variant}
          draft={task.draft}
          nextSequence={1}
          onSave={keepNothing}
          onSubmit={tryQuestions.bind(null, address)}
        />
      );
    default:
      return (
        <BenchLab
          {...shared}
          variant={task.variant}
          draft={task.draft}
          onSubmit={tryBench.bind(null, address)}
        />
      );
  }
}
