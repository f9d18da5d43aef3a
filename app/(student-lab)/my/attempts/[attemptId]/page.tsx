import type { Metadata } from 'next';
import { notFound, redirect } from 'next/navigation';
import { pairLabSky } from '@/components/lab/pair/pair-lab-sky';
import { LinkButton } from '@/components/ui/link-button';
import { getViewer } from '@/lib/auth/session';
import { loadKits } from '@/lib/content/sky-catalogue';
import { systemClock } from '@/lib/data/clock';
import { getAttemptResult, getOpenAttempt, type OpenAttempt } from '@/lib/data/attempts';
import { routes } from '@/lib/routes';
import { startPracticeRound } from '@/app/(student)/my/actions';
import { dueInWords } from '@/app/(student)/my/due-words';
import { StartForm } from '@/app/(student)/my/start-form';
import { saveAttemptDraft, sendAttempt } from './actions';
import { AttemptLab } from './attempt-lab';

export const metadata: Metadata = { title: 'Pick the pair' };

type AttemptPageProps = { params: Promise<{ attemptId: string }> };

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
  const kitName = loadKits().find(({ id }) => id === attempt.kitId)?.name ?? 'your telescope';
  return (
    <AttemptLab
      sky={pairLabSky(attempt.variant, { kitName, placeName: attempt.placeName })}
      mode={attempt.mode}
      attemptKey={attempt.id}
      draft={attempt.draft}
      nextSequence={attempt.nextSequence}
      about={about(attempt, systemClock.now())}
      save={saveAttemptDraft.bind(null, attempt.id)}
      send={sendAttempt.bind(null, attempt.id)}
      resultAddress={routes.student.attemptResult(attempt.id)}
      afterwards={<Afterwards attempt={attempt} />}
    />
  );
}

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
            ...(assignmentId === null ? {} : { assignmentId }),
            ...(kitId === null ? {} : { kitId }),
          }}
          label="Practise on another sky"
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
