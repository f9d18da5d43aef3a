import type { ReactNode } from 'react';
import { GradebookStateMark } from '@/components/grading/gradebook/gradebook-state-mark';
import { markText } from '@/components/grading/mark-text';
import { LinkButton } from '@/components/ui/link-button';
import { TextLink } from '@/components/ui/text-link';
import type { StudentAssignment, StudentPart } from '@/lib/data/attempts';
import { routes } from '@/lib/routes';
import { startCheck, startPracticeRound } from './actions';
import { attemptsInWords, isToDo, nextStepOf, type NextStep } from './assignment-standing';
import { partName } from './part-name';
import { StartForm } from './start-form';

type PartProps = {
  assignment: Pick<StudentAssignment, 'assignmentId' | 'dueAt'>;
  part: StudentPart;
  now: Date;
  /** For a teacher's look: where the part is tried; nothing can be started or practised then. */
  tryAt?: (partId: string) => string;
};

/** One part of an assignment of several: how it stands, its mark, and its next step. */
export function PartRow({ assignment, part, now, tryAt }: PartProps) {
  const name = partName(part);
  return (
    <li className="grid gap-x-6 gap-y-2 border-t border-line py-3 sm:grid-cols-[minmax(0,1fr)_auto] sm:items-center">
      <div>
        <h4 className="font-semibold">{name}</h4>
        <p className="flex flex-wrap gap-x-3 text-sm text-soft">
          <GradebookStateMark state={part.state} />
          {part.mark === null ? null : <span>{markText(part.mark)} of 100</span>}
          <span>{attemptsInWords({ ...part, dueAt: assignment.dueAt })}</span>
          {part.weight === 0 ? <span>does not count</span> : null}
        </p>
        {part.gateFailed ? (
          <p className="text-sm">A safety gate was failed: not yet, whatever the mark.</p>
        ) : null}
      </div>
      <PartActions assignment={assignment} part={part} now={now} tryAt={tryAt} name={name} />
    </li>
  );
}

/** Start, go on or take again; see what came of it; practise. Named after the part where there are several. */
export function PartActions({ assignment, part, now, tryAt, name }: PartProps & { name?: string }) {
  const { assignmentId, dueAt } = assignment;
  const { partId, lastSubmittedAttemptId } = part;
  const standing = { ...part, dueAt };
  const said = name === undefined ? undefined : <span className="sr-only">: {name}</span>;
  if (tryAt !== undefined)
    return (
      <div>
        <LinkButton href={tryAt(partId)} variant="primary">
          {name === undefined ? 'Start the check' : 'Start'}
          {said}
        </LinkButton>
      </div>
    );
  return (
    // With no step left it holds nothing, and would still push what stands beside it.
    <div className="flex flex-wrap items-center gap-3 empty:hidden">
      <StepButton
        step={nextStepOf(standing, now)}
        values={{ assignmentId, partId }}
        variant={isToDo(standing, now) ? 'primary' : 'quiet'}
        said={said}
      />
      {name === undefined ? null : (
        <StartForm
          action={startPracticeRound}
          values={{ assignmentId, partId }}
          label="Practise"
          said={said}
          variant="quiet"
        />
      )}
      {name === undefined || lastSubmittedAttemptId === null || !part.feedbackVisible ? null : (
        <TextLink href={routes.student.attemptResult(lastSubmittedAttemptId)}>
          See result{said}
        </TextLink>
      )}
    </div>
  );
}

function StepButton({
  step,
  values,
  variant,
  said,
}: {
  step: NextStep;
  values: Readonly<Record<string, string>>;
  /** 'primary' for what must still be done. */
  variant: 'primary' | 'quiet';
  /** For a reader: which part; absent where there is one. */
  said: ReactNode;
}): ReactNode {
  const alone = said === undefined;
  switch (step.kind) {
    case 'go-on':
      return (
        <LinkButton href={routes.student.attempt(step.attemptId)} variant="primary">
          {alone ? 'Go on with the check' : 'Go on'}
          {said}
        </LinkButton>
      );
    case 'start':
      return (
        <StartForm
          action={startCheck}
          values={values}
          label={
            alone
              ? step.again
                ? 'Take the check again'
                : 'Start the check'
              : step.again
                ? 'Take it again'
                : 'Start'
          }
          said={said}
          variant={variant}
        />
      );
    case 'too-late':
    case 'no-attempts-left':
    case 'excused':
      return null;
  }
}
