import type { ReactNode } from 'react';
import { GradebookStateMark } from '@/components/grading/gradebook-state-mark';
import { markText } from '@/components/grading/mark-text';
import { LinkButton } from '@/components/ui/link-button';
import { Meter } from '@/components/ui/meter';
import { TextLink } from '@/components/ui/text-link';
import type { StudentAssignment } from '@/lib/data/attempts';
import { routes } from '@/lib/routes';
import { startCheck, startPracticeRound } from './actions';
import { attemptsInWords, nextStepOf, type NextStep } from './assignment-standing';
import { dueInWords } from './due-words';
import { StartForm } from './start-form';

/** One assignment as its student sees it: when it is due, how it stands, and the next step. */
export function AssignmentCard({ assignment, now }: { assignment: StudentAssignment; now: Date }) {
  const { assignmentId, title, placeName, lessonSlug, lastSubmittedAttemptId } = assignment;
  const step = nextStepOf(assignment, now);
  return (
    <article
      aria-labelledby={`assignment-${assignmentId}`}
      className="rounded-b-lg border border-t-2 border-line border-t-strong bg-panel p-4 sm:p-5"
    >
      <div className="flex flex-wrap items-baseline justify-between gap-x-4">
        <h3 id={`assignment-${assignmentId}`} className="text-lg font-semibold">
          {title}
        </h3>
        <GradebookStateMark state={assignment.state} />
      </div>
      <p className="text-sm text-soft">
        {dueInWords(assignment.dueAt, assignment.dueTimeZone, now)}
        {placeName === '' ? '' : ` · the sky of ${placeName}`} · {attemptsInWords(assignment)}
      </p>
      <Standing assignment={assignment} />
      <StepSaid step={step} />
      <div className="mt-4 flex flex-wrap items-start gap-3">
        <StepButton step={step} assignmentId={assignmentId} />
        <StartForm
          action={startPracticeRound}
          values={{ assignmentId }}
          label="Practise under this sky"
          variant="quiet"
        />
        {lastSubmittedAttemptId === null ? null : (
          <LinkButton href={routes.student.attemptResult(lastSubmittedAttemptId)}>
            See how it came out
          </LinkButton>
        )}
      </div>
      {lessonSlug === null ? null : (
        <p className="mt-3 text-sm">
          <TextLink href={routes.lessons.one(lessonSlug)}>
            {assignment.state === 'not-started' ? 'Read the lesson first' : 'Read the lesson again'}
          </TextLink>
        </p>
      )}
    </article>
  );
}

function Standing({ assignment }: { assignment: StudentAssignment }): ReactNode {
  const { mark, passMark, feedbackVisible, lastSubmittedAttemptId } = assignment;
  if (mark !== null) {
    return (
      <div className="mt-3 max-w-sm">
        <Meter
          value={mark}
          label="Your mark"
          valueText={`${markText(mark)} of 100`}
          markAt={passMark}
          markLabel={`${markText(passMark)} to pass`}
        />
      </div>
    );
  }
  if (lastSubmittedAttemptId !== null && !feedbackVisible) {
    return <p className="mt-3">Handed in. Your teacher shows marks later.</p>;
  }
  return null;
}

function StepSaid({ step }: { step: NextStep }): ReactNode {
  switch (step.kind) {
    case 'too-late':
      return <p className="mt-3">The due time is over. Ask your teacher for more time.</p>;
    case 'excused':
      return <p className="mt-3">Your teacher has excused you: this does not count for you.</p>;
    case 'go-on':
      return (
        <p className="mt-3">An attempt is open. What you chose so far is kept: go on from there.</p>
      );
    case 'start':
    case 'no-attempts-left':
      return null;
  }
}

function StepButton({ step, assignmentId }: { step: NextStep; assignmentId: string }): ReactNode {
  switch (step.kind) {
    case 'go-on':
      return (
        <LinkButton href={routes.student.attempt(step.attemptId)} variant="primary">
          Go on with the check
        </LinkButton>
      );
    case 'start':
      return (
        <StartForm
          action={startCheck}
          values={{ assignmentId }}
          label={step.again ? 'Take the check again' : 'Start the check'}
          variant={step.again ? 'quiet' : 'primary'}
        />
      );
    case 'too-late':
    case 'no-attempts-left':
    case 'excused':
      return null;
  }
}
