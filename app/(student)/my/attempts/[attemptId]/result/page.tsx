import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { TeacherComments } from '@/components/grading/comments/teacher-comments';
import { criterionNames } from '@/app/criterion-names';
import { markText } from '@/components/grading/mark-text';
import { LinkButton } from '@/components/ui/link-button';
import { Notice } from '@/components/ui/notice';
import { PageHeader } from '@/components/ui/page-header';
import { Panel } from '@/components/ui/panel';
import { getViewer } from '@/lib/auth/session';
import { loadKits } from '@/lib/content/sky-catalogue';
import { getAttemptResult, listStudentAssignments, type AttemptResult } from '@/lib/data/attempts';
import { systemClock } from '@/lib/data/clock';
import { getAttemptComments } from '@/lib/data/comments';
import { routes } from '@/lib/routes';
import { AttemptOutcome } from '@/app/attempt-outcome';
import { startCheck, startPracticeRound } from '../../../actions';
import { nextStepOf, standingsOf } from '../../../assignment-standing';
import { momentInWords } from '../../../due-words';
import { practiseAgain } from '../../../practise-again';
import { StartForm } from '../../../start-form';
import { GivenBackNotice } from './given-back-notice';
import { withheldInWords } from './withheld-words';

export const metadata: Metadata = { title: 'How it came out' };

type ResultPageProps = { params: Promise<{ attemptId: string }> };

export default async function ResultPage({ params }: ResultPageProps) {
  const viewer = await getViewer();
  const attempt = await getAttemptResult(viewer, (await params).attemptId);
  if (attempt === null) notFound();
  const written = await getAttemptComments(viewer, attempt.id);
  const now = systemClock.now();
  const assignment = (await listStudentAssignments(viewer)).find(
    ({ assignmentId }) => assignmentId === attempt.assignmentId,
  );
  const part =
    assignment === undefined
      ? undefined
      : standingsOf(assignment).find(({ partId }) => partId === attempt.partId);
  const step = part === undefined ? undefined : nextStepOf(part, now).kind;
  const zone = assignment?.dueTimeZone ?? attempt.classTimeZone;
  const kitName = loadKits().find(({ id }) => id === attempt.kitId)?.name ?? 'your telescope';
  const handedIn = momentInWords(attempt.submittedAt, zone, now);
  return (
    <>
      <PageHeader
        title={attempt.title}
        crumbs={[{ label: 'My work', href: routes.student.myWork() }]}
        lead={`${attempt.mode === 'check' ? `Attempt ${String(attempt.attemptNumber)}, handed in` : 'Practice, sent'} ${handedIn.away}, ${handedIn.date} (${handedIn.zone})`}
      />
      {/* On paper nothing else tells whose it is. */}
      <p className="hidden print:mb-3 print:block">{attempt.studentName}</p>
      <div className="grid gap-6">
        {written === null || written.returnedAt === null || written.newerStarted ? null : (
          <GivenBackNotice step={step} />
        )}
        {written === null || written.comments.length === 0 ? null : (
          <Panel title="What your teacher wrote">
            <TeacherComments
              comments={written.comments}
              names={attempt.result === null ? [] : criterionNames(attempt.result)}
              timeZone={zone}
            />
          </Panel>
        )}
        {attempt.result === null ? (
          <Notice tone="info" title="Your answer has arrived">
            <p>{withheldInWords(attempt.feedbackVisibleFrom, zone, now)}</p>
          </Notice>
        ) : (
          <>
            <MarkOf attempt={attempt} />
            <AttemptOutcome attempt={attempt} kitName={kitName} />
          </>
        )}
        {attempt.result === null && attempt.late ? (
          <Notice tone="caution" title="It came after the due time">
            <p>Your teacher sees when it arrived.</p>
          </Notice>
        ) : null}
        <div className="no-print flex flex-wrap items-start gap-3">
          {attempt.mode === 'check' &&
          assignment !== undefined &&
          part !== undefined &&
          step === 'start' ? (
            <StartForm
              action={startCheck}
              values={{ assignmentId: assignment.assignmentId, partId: part.partId }}
              label="Take the check again"
            />
          ) : null}
          <StartForm
            action={startPracticeRound}
            values={{
              lab: attempt.lab,
              ...(attempt.assignmentId === null ? {} : { assignmentId: attempt.assignmentId }),
              ...(attempt.partId === null ? {} : { partId: attempt.partId }),
              ...(attempt.kitId === null ? {} : { kitId: attempt.kitId }),
            }}
            label={practiseAgain(attempt.lab)}
            variant="quiet"
          />
          <LinkButton href={routes.student.myWork()}>Back to my work</LinkButton>
        </div>
      </div>
    </>
  );
}

/** The mark of a check with what lateness took; practice has none that counts. */
function MarkOf({ attempt }: { attempt: AttemptResult }) {
  const { mode, mark, markByHand, passMark, late, latePenalty } = attempt;
  if (mode === 'practice' || mark === null) return null;
  const toPass = passMark === null ? '' : `; ${markText(passMark)} to pass`;
  return (
    <p className="max-w-measure">
      {markByHand === null ? (
        <>
          The mark of this attempt:{' '}
          <strong className="font-semibold">{markText(mark)} of 100</strong>
          {toPass}.
        </>
      ) : (
        <>
          Your teacher set your mark to{' '}
          <strong className="font-semibold">{markText(markByHand)}</strong>
          {toPass}. Computed for this attempt: {markText(mark)}.
        </>
      )}
      {late ? (
        <span className="text-caution">
          {' '}
          It came after the due time
          {latePenalty > 0 ? `: ${markText(latePenalty * 100)} % of the mark is taken off` : ''}.
        </span>
      ) : null}
    </p>
  );
}
