import type { ReactNode } from 'react';
import { lessonName } from '@/lib/wording/lesson-name';
import { GradebookStateMark } from '@/components/grading/gradebook/gradebook-state-mark';
import { labText } from '@/components/grading/template-text';
import { markText } from '@/components/grading/mark-text';
import { Meter } from '@/components/ui/meter';
import { TextLink } from '@/components/ui/text-link';
import { skillTitles } from '@/lib/course/skills';
import type { StudentAssignment } from '@/lib/data/attempts';
import { routes } from '@/lib/routes';
import { labOptions } from '@/lib/variants/labs';
import { startPracticeRound } from './actions';
import { attemptsInWords, nextStepOf, standingsOf } from './assignment-standing';
import { dueInWords } from './due-words';
import { givenBackInTime, givenBackTooLate } from './given-back-words';
import { lessonsToRead } from './lessons-to-read';
import { PartActions, PartRow } from './part-row';
import { StartForm } from './start-form';

type CardProps = {
  assignment: StudentAssignment;
  now: Date;
  /** For a teacher's look: where a part is tried instead of started. */
  tryAt?: (partId: string) => string;
};

/** One assignment as its student sees it: when it is due, what to read, how it stands, and what is next. */
export function AssignmentCard({ assignment, now, tryAt }: CardProps) {
  const { assignmentId, title, placeName, parts } = assignment;
  const [only, ...more] = parts;
  const single = more.length === 0 ? only : undefined;
  const withoutSky = parts.every(({ lab }) => labOptions[lab].withoutSky === true);
  const isLabName = single === undefined || title === labText[single.lab].name;
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
          {isLabName ? '' : `${labText[single.lab].name} · `}
          {dueInWords(assignment.dueAt, assignment.dueTimeZone, now)}
          {placeName === '' || withoutSky ? '' : ` · the sky of ${placeName}`}
          {single === undefined
            ? ''
            : ` · ${attemptsInWords({ ...single, dueAt: assignment.dueAt })}`}
        </p>
        <StepSaid assignment={assignment} now={now} />
      </div>
      <div className="space-y-2 md:col-start-2 md:row-start-1">
        <GradebookStateMark state={assignment.state} />
        <Standing assignment={assignment} />
        <SignOffSaid toSignOff={assignment.toSignOff} />
      </div>
      {single === undefined ? (
        <Parts assignment={assignment} now={now} tryAt={tryAt} />
      ) : (
        <div className="self-end md:col-span-2">
          <div className="flex flex-wrap items-start gap-3">
            <PartActions assignment={assignment} part={single} now={now} tryAt={tryAt} />
            {tryAt === undefined ? (
              <StartForm
                action={startPracticeRound}
                values={{ assignmentId, partId: single.partId }}
                label={withoutSky ? 'Practise such questions' : 'Practise under this sky'}
                variant="quiet"
              />
            ) : null}
          </div>
          <p className="mt-3 flex flex-wrap gap-x-6 gap-y-1 text-sm">
            {single.lastSubmittedAttemptId === null || !assignment.feedbackVisible ? null : (
              <TextLink href={routes.student.attemptResult(single.lastSubmittedAttemptId)}>
                See how it came out
              </TextLink>
            )}
            <LessonLinks lessons={lessonsToRead(assignment).lessons} />
          </p>
        </div>
      )}
    </article>
  );
}

/** What to read first, then what is marked, in order. */
function Parts({ assignment, now, tryAt }: CardProps) {
  const { parts } = assignment;
  const { set, lessons } = lessonsToRead(assignment);
  return (
    <div className="md:col-span-2">
      {lessons.length === 0 ? null : (
        <p className="mb-3 flex flex-wrap gap-x-4 gap-y-1">
          <span>{set ? 'To read:' : 'Lessons that help:'}</span>
          {lessons.map((slug) => (
            <TextLink key={slug} href={routes.lessons.one(slug)}>
              {lessonName(slug)}
            </TextLink>
          ))}
        </p>
      )}
      <ol>
        {parts.map((part) => (
          <PartRow key={part.partId} assignment={assignment} part={part} now={now} tryAt={tryAt} />
        ))}
      </ol>
    </div>
  );
}

/** The whole is complete only when these were seen outdoors; shown once the work itself is begun. */
function SignOffSaid({ toSignOff }: Pick<StudentAssignment, 'toSignOff'>): ReactNode {
  if (toSignOff.length === 0) return null;
  return (
    <p className="text-sm text-soft">
      At the telescope your teacher will also look at:{' '}
      {toSignOff.map((skill) => skillTitles[skill].toLowerCase()).join(', ')}.
    </p>
  );
}

function LessonLinks({ lessons }: Pick<ReturnType<typeof lessonsToRead>, 'lessons'>): ReactNode {
  const [only, ...more] = lessons;
  if (only !== undefined && more.length === 0)
    return <TextLink href={routes.lessons.one(only)}>Read the lesson</TextLink>;
  return lessons.map((slug) => (
    <TextLink key={slug} href={routes.lessons.one(slug)}>
      Read: {lessonName(slug)}
    </TextLink>
  ));
}

function Standing({ assignment }: { assignment: StudentAssignment }): ReactNode {
  const { mark, passMark, gateFailed, feedbackVisible, parts, markByHand } = assignment;
  if (mark !== null) {
    const waiting = markByHand ? 0 : parts.filter((part) => part.mark === null).length;
    return (
      <>
        <Meter
          value={mark}
          label={waiting === 0 ? 'Your mark' : 'Your mark so far'}
          valueText={`${markText(mark)} of 100`}
          markAt={passMark}
          markLabel={`${markText(passMark)} to pass`}
        />
        {gateFailed ? <p>A safety gate was failed: not yet, whatever the mark.</p> : null}
      </>
    );
  }
  const handedIn = parts.some(({ lastSubmittedAttemptId }) => lastSubmittedAttemptId !== null);
  return handedIn && !feedbackVisible ? <p>Handed in. Your teacher shows marks later.</p> : null;
}

function StepSaid({ assignment, now }: { assignment: StudentAssignment; now: Date }): ReactNode {
  const steps = standingsOf(assignment).map((standing) => nextStepOf(standing, now).kind);
  if (steps.includes('excused'))
    return <p className="mt-3">Your teacher has excused you: this does not count for you.</p>;
  if (steps.includes('go-on'))
    return (
      <p className="mt-3">An attempt is open. What you did so far is kept: go on from there.</p>
    );
  if (assignment.state === 'returned')
    return (
      <p className="mt-3">{steps.includes('too-late') ? givenBackTooLate : givenBackInTime}</p>
    );
  if (steps.includes('too-late'))
    return <p className="mt-3">The due time is over. Ask your teacher for more time.</p>;
  return null;
}
