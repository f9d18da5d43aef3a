import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { DecisionForms } from '@/components/desk/decision-forms';
import { AttemptFacts } from '@/components/grading/attempt-facts';
import { benchTexts } from '@/components/lab/bench/bench-texts';
import { LinkButton } from '@/components/ui/link-button';
import { Notice } from '@/components/ui/notice';
import { PageHeader } from '@/components/ui/page-header';
import { Panel } from '@/components/ui/panel';
import { PrintButton } from '@/components/ui/print-button';
import { getViewer } from '@/lib/auth/session';
import { getAttemptResult } from '@/lib/data/attempts';
import { getClass } from '@/lib/data/classes';
import { getGradebook } from '@/lib/data/gradebook';
import { routes } from '@/lib/routes';
import { rightsIn } from '../../classes/[classId]/class-of';
import { isBenchLab, type BenchLab } from '@/lib/variants/bench/bench-labs';
import type { Lab } from '@/lib/variants/labs';
import { AttemptOutcome } from '@/app/attempt-outcome';
import { decideDue, decideExcuse, decideMark } from '../../decision-actions';
import { kitChoices } from '../../form-choices';

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
  const [details, gradebook] = await Promise.all([
    getClass(viewer, attempt.classId),
    getGradebook(viewer, attempt.classId),
  ]);
  if (details === null || gradebook === null) notFound();
  const { mayTeach } = rightsIn(details);
  const { assignmentId, studentId, mode, result } = attempt;
  const cell =
    mode === 'check'
      ? gradebook.cells.find(
          (entry) => entry.studentId === studentId && entry.assignmentId === assignmentId,
        )
      : undefined;
  const counting =
    cell?.mark === undefined ||
    cell.mark === null ||
    (cell.mark === attempt.mark && !cell.overridden)
      ? null
      : { mark: cell.mark, overridden: cell.overridden };
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
            <LinkButton href={routes.teacher.attemptKey(attempt.id)}>The answer key</LinkButton>
            <PrintButton />
          </>
        }
      />
      <div className="space-y-6">
        <Panel>
          <AttemptFacts attempt={attempt} timeZone={details.timeZone} counting={counting} />
        </Panel>
        {cell !== undefined && assignmentId !== null && mayTeach ? (
          <DecisionForms
            idPrefix="decide"
            excused={cell.state === 'excused'}
            timeZone={details.timeZone}
            actions={{
              mark: decideMark.bind(null, { studentId, assignmentId, timeZone: details.timeZone }),
              excuse: decideExcuse.bind(null, {
                studentId,
                assignmentId,
                timeZone: details.timeZone,
              }),
              due: decideDue.bind(null, { studentId, assignmentId, timeZone: details.timeZone }),
            }}
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
