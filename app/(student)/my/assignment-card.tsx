import type { ReactNode } from 'react';
import { GradebookStateMark } from '@/components/grading/gradebook/gradebook-state-mark';
import { labText } from '@/components/grading/template-text';
import { markText } from '@/components/grading/mark-text';
import { LinkButton } from '@/components/ui/link-button';
import { Meter } from '@/components/ui/meter';
import { TextLink } from '@/components/ui/text-link';
import type { StudentAssignment } from '@/lib/data/attempts';
import { routes } from '@/lib/routes';
import { labOptions } from '@/lib/variants/labs';
import { startCheck, startPracticeRound } from './actions';
import { attemptsInWords, isToDo, nextStepOf, type NextStep } from './assignment-standing';
import { dueInWords } from './due-words';
import { StartForm } from './start-form';

/** One assignment as its student sees it: when it is due, how it stands, and the next step. */
export function AssignmentCard({ assignment, now }: { assignment: StudentAssignment; now: Date }) {
  const { assignmentId, lab, title, placeName, lessonSlug, lastSubmittedAttemptId } = assignment;
  const { withoutSky = false } = labOptions[lab];
  const step = nextStepOf(assignment, now);
  return (
    <article
      aria-labelledby={`assignment-${assignmentId}`}
      className="grid gap-x-10 gap-y-4 rounded-b-lg border border-t-2 border-line border-t-strong bg-panel p-4 sm:p-5 md:grid-cols-[minmax(0,1fr)_18rem]"
    >
      <div>
        <h3 id={`assignment-${assignmentId}`} className="text-lg font-semibold">
          {title}
        </h3>
        <p className="text-sm text-soft">
          {title === labText[lab].name ? '' : `${labText[lab].name} · `}
          {dueInWords(assignment.dueAt, assignment.dueTimeZone, now)}
          {placeName === '' || withoutSky ? '' : ` · the sky of ${placeName}`} ·{' '}
          {attemptsInWords(assignment)}
        </p>
        <StepSaid step={step} />
      </div>
      <div className="space-y-2 md:col-start-2 md:row-span-2 md:row-start-1">
        <GradebookStateMark state={assignment.state} />
        <Standing assignment={assignment} />
      </div>
      <div className="self-end">
        <div className="flex flex-wrap items-start gap-3">
          <StepButton
            step={step}
            assignmentId={assignmentId}
            variant={isToDo(assignment, now) ? 'primary' : 'quiet'}
          />
          <StartForm
            action={startPracticeRound}
            values={{ assignmentId }}
            label={withoutSky ? 'Practise such questions' : 'Practise under this sky'}
            variant="quiet"
          />
        </div>
        <p className="mt-3 flex flex-wrap gap-x-6 gap-y-1 text-sm">
          {lastSubmittedAttemptId === null || !assignment.feedbackVisible ? null : (
            <TextLink href={routes.student.attemptResult(lastSubmittedAttemptId)}>
              See how it came out
            </TextLink>
          )}
          {lessonSlug === null ? null : (
            <TextLink href={routes.lessons.one(lessonSlug)}>Read the lesson</TextLink>
          )}
        </p>
      </div>
    </article>
  );
}

function Standing({ assignment }: { assignment: StudentAssignment }): ReactNode {
  const { mark, passMark, gateFailed, feedbackVisible, lastSubmittedAttemptId } = assignment;
  if (mark !== null) {
    return (
      <>
        <Meter
          value={mark}
          label="Your mark"
          valueText={`${markText(mark)} of 100`}
          markAt={passMark}
          markLabel={`${markText(passMark)} to pass`}
        />
        {gateFailed ? <p>A safety gate was failed: not yet, whatever the mark.</p> : null}
      </>
    );
  }
  if (lastSubmittedAttemptId !== null && !feedbackVisible) {
    return <p>Handed in. Your teacher shows marks later.</p>;
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
        <p className="mt-3">An attempt is open. What you did so far is kept: go on from there.</p>
      );
    case 'start':
    case 'no-attempts-left':
      return null;
  }
}

function StepButton({
  step,
  assignmentId,
  variant,
}: {
  step: NextStep;
  assignmentId: string;
  /** 'primary' for what must still be done. */
  variant: 'primary' | 'quiet';
}): ReactNode {
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
          variant={variant}
        />
      );
    case 'too-late':
    case 'no-attempts-left':
    case 'excused':
      return null;
  }
}
