import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { DecisionForms } from '@/components/desk/decision-forms';
import { AttemptFacts } from '@/components/grading/attempt-facts';
import { CommentForms } from '@/components/desk/comment-forms';
import { TeacherComments } from '@/components/grading/comments/teacher-comments';
import { criterionNames } from '@/app/criterion-names';
import { benchTexts } from '@/components/lab/bench/bench-texts';
import { LinkButton } from '@/components/ui/link-button';
import { Notice } from '@/components/ui/notice';
import { PageHeader } from '@/components/ui/page-header';
import { Panel } from '@/components/ui/panel';
import { PrintButton } from '@/components/ui/print-button';
import { getViewer } from '@/lib/auth/session';
import { getAttemptResult } from '@/lib/data/attempts';
import { getClass } from '@/lib/data/classes';
import { systemClock } from '@/lib/data/clock';
import { getAttemptComments } from '@/lib/data/comments';
import { getDecisionTimes } from '@/lib/data/decisions-standing';
import { getStudentGradebook } from '@/lib/data/gradebook';
import { routes } from '@/lib/routes';
import { rightsIn } from '../../classes/[classId]/class-of';
import { isBenchLab, type BenchLab } from '@/lib/variants/bench/bench-labs';
import type { Lab } from '@/lib/variants/labs';
import { AttemptOutcome } from '@/app/attempt-outcome';
import { decisionsOf } from '../../decisions-of';
import { kitChoices } from '../../form-choices';
import { comment, returnWork, undoReturn } from './actions';

export const metadata: Metadata = { title: 'Attempt' };

const outcomeTitle: Readonly<Record<Exclude<Lab, BenchLab>, string>> = {
  'pick-the-pair': 'What was picked, what would have been best, and why',
  'alignment-run': 'How the run went, star by star, and what came of it',
  'what-went-wrong': 'What was named, what it was, and how it shows',
  'lesson-questions': 'What was asked, what was answered, and what is right',
};

export default async function AttemptPage({ params }: { params: Promise<{ attemptId: string }> }) {
  const viewer = await getViewer();
  const attempt = await getAttemptResult(viewer, (await params).attemptId);
  if (attempt === null) notFound();
  const { assignmentId, studentId, mode, result } = attempt;
  const [details, gradebook, written, decided] = await Promise.all([
    getClass(viewer, attempt.classId),
    mode === 'check' && assignmentId !== null
      ? getStudentGradebook(viewer, { studentId, assignmentId })
      : null,
    getAttemptComments(viewer, attempt.id),
    getDecisionTimes(viewer, studentId),
  ]);
  if (details === null) notFound();
  const { mayTeach } = rightsIn(details);
  const [cell] = gradebook?.cells ?? [];
  const dueAt = cell?.extendedDueAt ?? gradebook?.assignments[0]?.dueAt ?? null;
  const names = result === null ? [] : criterionNames(result);
  const part = cell?.parts.find(({ partId }) => partId === attempt.partId) ?? cell?.parts[0];
  const overridden = cell?.overridden ?? false;
  const mark = (overridden ? cell?.mark : part?.mark) ?? null;
  const counting =
    mark === null || (mark === attempt.mark && !overridden) ? null : { mark, overridden };
  const kitName = kitChoices().find(({ id }) => id === attempt.kitId)?.name ?? 'own telescope';
  return (
    <>
      <PageHeader
        title={`${attempt.studentName}: ${attempt.title}`}
        crumbs={[
          { label: 'Desk', href: routes.teacher.desk() },
          { label: details.name, href: routes.teacher.classGradebook(details.id) },
          { label: attempt.studentName, href: routes.teacher.student(studentId) },
        ]}
        actions={
          <>
            {assignmentId === null ? null : (
              <LinkButton href={routes.teacher.assignment(assignmentId)}>The assignment</LinkButton>
            )}
            {assignmentId === null || mode === 'practice' ? null : (
              <LinkButton href={routes.teacher.gradebookCell(studentId, assignmentId)}>
                In the gradebook
              </LinkButton>
            )}
            {details.role === 'cover' ? null : (
              <LinkButton href={routes.teacher.attemptKey(attempt.id)}>The answer key</LinkButton>
            )}
            <PrintButton />
          </>
        }
      />
      <div className="space-y-6">
        <Panel>
          <AttemptFacts attempt={attempt} timeZone={details.timeZone} counting={counting} />
        </Panel>
        {cell !== undefined && assignmentId !== null && decided !== null ? (
          <DecisionForms
            idPrefix="decide"
            excused={cell.excused}
            timeZone={details.timeZone}
            actions={decisionsOf({
              studentId,
              assignmentId,
              timeZone: details.timeZone,
              openedOn: decided(assignmentId),
            })}
          />
        ) : null}
        {written === null || written.comments.length === 0 ? null : (
          <Panel title="What teachers wrote">
            <TeacherComments
              comments={written.comments}
              names={names}
              timeZone={details.timeZone}
            />
          </Panel>
        )}
        {written !== null && mode === 'check' && assignmentId !== null && mayTeach ? (
          <CommentForms
            written={written}
            names={names}
            actions={{
              write: comment.bind(null, attempt.id),
              giveBack: returnWork.bind(null, attempt.id),
              takeBack: undoReturn.bind(null, attempt.id),
            }}
            moreTimeAt={
              dueAt !== null && new Date(dueAt) < systemClock.now()
                ? routes.teacher.gradebookCell(studentId, assignmentId)
                : null
            }
          />
        ) : null}
        {result === null ? (
          <Notice title="No mark yet">It has arrived and waits to be marked.</Notice>
        ) : (
          <section aria-labelledby="what-was-picked">
            <h2 id="what-was-picked" className="mb-1 text-xl font-semibold">
              {isBenchLab(attempt.lab)
                ? benchTexts[attempt.lab].outcomeTitle
                : outcomeTitle[attempt.lab]}
            </h2>
            <p className="mb-5 text-soft">
              As {attempt.studentName} reads it: “you” is the student.
            </p>
            <AttemptOutcome attempt={attempt} kitName={kitName} markShownAbove />
          </section>
        )}
      </div>
    </>
  );
}
