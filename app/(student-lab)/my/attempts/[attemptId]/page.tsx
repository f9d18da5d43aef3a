import type { Metadata } from 'next';
import { notFound, redirect } from 'next/navigation';
import { labText } from '@/components/grading/template-text';
import { faultView } from '@/components/lab/fault/fault-view';
import { pairLabSky } from '@/components/lab/pair/pair-lab-sky';
import { runLabVariant } from '@/components/lab/run/run-lab-variant';
import { LinkButton } from '@/components/ui/link-button';
import type { Viewer } from '@/lib/auth/policy';
import { getViewer } from '@/lib/auth/session';
import { loadCatalogue, loadKits } from '@/lib/content/sky-catalogue';
import { systemClock } from '@/lib/data/clock';
import { getAttemptResult, getOpenAttempt, type OpenAttempt } from '@/lib/data/attempts';
import { getMySkills } from '@/lib/data/skill-progress';
import { hintLevels } from '@/lib/mastery/hint-levels';
import { routes } from '@/lib/routes';
import { startPracticeRound } from '@/app/(student)/my/actions';
import { dueInWords } from '@/app/(student)/my/due-words';
import { practiseAgain } from '@/app/(student)/my/practise-again';
import { StartForm } from '@/app/(student)/my/start-form';
import {
  lookInFaultAttempt,
  saveAttemptDraft,
  sendBenchAttempt,
  sendFaultAttempt,
  sendPairAttempt,
  sendQuestionsAttempt,
  sendRunAttempt,
} from './actions';
import { BenchAttempt } from './bench-attempt';
import { FaultAttempt } from './fault-attempt';
import { PairAttempt } from './pair-attempt';
import { QuestionsAttempt } from './questions-attempt';
import { RunAttempt } from './run-attempt';

type AttemptPageProps = { params: Promise<{ attemptId: string }> };

export async function generateMetadata({ params }: AttemptPageProps): Promise<Metadata> {
  const attempt = await getOpenAttempt(await getViewer(), (await params).attemptId);
  return { title: attempt === null ? 'Attempt' : labText[attempt.lab].name };
}

export default async function AttemptPage({ params }: AttemptPageProps) {
  const { attemptId } = await params;
  const viewer = await getViewer();
  const attempt = await getOpenAttempt(viewer, attemptId);
  if (attempt === null) {
    // Submitted before, perhaps in another window: its result is what there is to see.
    if ((await getAttemptResult(viewer, attemptId)) !== null) {
      redirect(routes.student.attemptResult(attemptId));
    }
    notFound();
  }
  return <LabOfAttempt attempt={attempt} hints={await hintsFor(viewer, attempt)} />;
}

/** A practice's hints fade as its skills are mastered; a check has none. */
async function hintsFor(viewer: Viewer, { mode, lab }: OpenAttempt): Promise<number> {
  if (mode === 'check') return 0;
  const standings = (await getMySkills(viewer))?.standings ?? [];
  return hintLevels(
    lab,
    (wanted) => standings.find(({ skill }) => skill === wanted)?.state ?? 'not-started',
  );
}

function LabOfAttempt({ attempt, hints }: { attempt: OpenAttempt; hints: number }) {
  const { id, mode, nextSequence, placeName } = attempt;
  const shared = {
    mode,
    nextSequence,
    attemptKey: id,
    about: about(attempt, systemClock.now()),
    save: saveAttemptDraft.bind(null, id),
    resultAddress: routes.student.attemptResult(id),
    afterwards: <Afterwards attempt={attempt} />,
  };
  switch (attempt.lab) {
    case 'pick-the-pair':
      return (
        <PairAttempt
          {...shared}
          hintLevels={hints}
          sky={pairLabSky(attempt.variant, { kitName: kitNameOf(attempt.kitId), placeName })}
          draft={attempt.draft}
          send={sendPairAttempt.bind(null, id)}
        />
      );
    case 'alignment-run':
      return (
        <RunAttempt
          {...shared}
          hintLevels={hints}
          variant={runLabVariant(attempt.variant, { placeName })}
          draft={attempt.draft}
          send={sendRunAttempt.bind(null, id)}
        />
      );
    case 'what-went-wrong':
      return (
        <FaultAttempt
          {...shared}
          hintLevels={hints}
          variant={faultView(attempt.variant, {
            placeName,
            catalogue: loadCatalogue(),
            seen: attempt.draft,
          })}
          draft={attempt.draft}
          send={sendFaultAttempt.bind(null, id)}
          lookUp={lookInFaultAttempt.bind(null, id)}
        />
      );
    case 'lesson-questions':
      return (
        <QuestionsAttempt
          {...shared}
          set={attempt.variant}
          draft={attempt.draft}
          send={sendQuestionsAttempt.bind(null, id)}
        />
      );
    default:
      return (
        <BenchAttempt
          {...shared}
          hintLevels={hints}
          title={labText[attempt.lab].name}
          variant={attempt.variant}
          draft={attempt.draft}
          send={sendBenchAttempt.bind(null, id)}
        />
      );
  }
}

const kitNameOf = (kitId: string | null): string =>
  loadKits().find(({ id }) => id === kitId)?.name ?? 'your telescope';

/** "Attempt 2 of 3 · Due tomorrow, …", or that this is practice. */
function about(attempt: OpenAttempt, now: Date): string {
  if (attempt.mode === 'practice') return 'Practice: nothing here counts.';
  const { attemptNumber, attemptsAllowed, dueAt, dueTimeZone } = attempt;
  const of = attemptsAllowed === null ? '' : ` of ${String(attemptsAllowed)}`;
  const due = dueInWords(dueAt, dueTimeZone, now);
  const over = dueAt !== null && now.getTime() > Date.parse(dueAt);
  return `Attempt ${String(attemptNumber)}${of} · ${due}${over ? '. You can still hand it in; it will count as late.' : ''}`;
}

function Afterwards({ attempt }: { attempt: OpenAttempt }) {
  const { mode, assignmentId, kitId } = attempt;
  return (
    <>
      {mode === 'practice' ? (
        <StartForm
          action={startPracticeRound}
          values={{
            lab: attempt.lab,
            ...(assignmentId === null ? {} : { assignmentId }),
            ...(kitId === null ? {} : { kitId }),
          }}
          label={practiseAgain(attempt.lab)}
        />
      ) : null}
      <LinkButton
        href={routes.student.myWork()}
        variant={mode === 'practice' ? 'quiet' : 'primary'}
      >
        Back to my work
      </LinkButton>
    </>
  );
}
