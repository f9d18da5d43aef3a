import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AttemptTable } from '@/components/desk/attempt-table';
import { ConfirmAction } from '@/components/desk/confirm-action';
import { DecisionForms } from '@/components/desk/decision-forms';
import { CellStanding } from '@/components/desk/gradebook/cell-standing';
import { CellTrail } from '@/components/grading/gradebook/cell-trail';
import { PartsTable } from '@/components/grading/gradebook/parts-table';
import { trailWords } from '@/components/grading/gradebook/trail-words';
import { LinkButton } from '@/components/ui/link-button';
import { PageHeader } from '@/components/ui/page-header';
import { Panel } from '@/components/ui/panel';
import { PrintButton } from '@/components/ui/print-button';
import { getViewer } from '@/lib/auth/session';
import { getCellTrail } from '@/lib/data/audit-trail';
import { getClass } from '@/lib/data/classes';
import { getDecisionTimes } from '@/lib/data/decisions-standing';
import {
  getStudentGradebook,
  getStudentRecord,
  type GradebookAssignment,
} from '@/lib/data/gradebook';
import { routes } from '@/lib/routes';
import { decisionsOf } from '../../../../decisions-of';
import { undo } from './actions';

export const metadata: Metadata = { title: 'Mark' };

const ruleText: Readonly<Record<GradebookAssignment['counting'], string>> = {
  best: 'The best attempt counts',
  last: 'The last attempt counts',
  first: 'The first attempt counts',
  average: 'The average of the attempts counts',
};

type CellPageProps = { params: Promise<{ studentId: string; assignmentId: string }> };

export default async function CellPage({ params }: CellPageProps) {
  const { studentId, assignmentId } = await params;
  const viewer = await getViewer();
  const [gradebook, record, trail, decided] = await Promise.all([
    getStudentGradebook(viewer, { studentId, assignmentId }),
    getStudentRecord(viewer, studentId),
    getCellTrail(viewer, { studentId, assignmentId }),
    getDecisionTimes(viewer, studentId),
  ]);
  const [cell] = gradebook?.cells ?? [];
  const [assignment] = gradebook?.assignments ?? [];
  if (record === null || cell === undefined || assignment === undefined) notFound();
  const { student } = record;
  const details = await getClass(viewer, student.classId);
  if (details === null) notFound();
  const { timeZone } = details;
  const attempts = record.attempts.filter(
    (attempt) => attempt.mode === 'check' && attempt.assignmentId === assignmentId,
  );
  const mayTeach = decided !== null;
  const last = trail?.lines.find(({ id }) => id === trail.lastDecisionId);
  return (
    <>
      <PageHeader
        title={`${student.displayName}: ${assignment.title}`}
        crumbs={[
          { label: 'Desk', href: routes.teacher.desk() },
          { label: student.className, href: routes.teacher.classGradebook(student.classId) },
          { label: student.displayName, href: routes.teacher.student(studentId) },
        ]}
        actions={
          <>
            <LinkButton href={routes.teacher.assignment(assignmentId)}>The assignment</LinkButton>
            <PrintButton />
          </>
        }
      />
      <div className="space-y-6">
        <Panel title="The mark and how it came about">
          <div className="space-y-4">
            <CellStanding {...{ cell, assignment, timeZone }} />
            <p className="max-w-measure text-sm text-soft">
              {ruleText[assignment.counting]}
              {cell.parts.length > 1 ? ' in each part, and the parts by their weights' : ''}.
              Lateness is taken off each attempt first.
              {cell.overridden ? ' Your own mark stands above that.' : ''}
            </p>
            {cell.parts.length > 1 ? <PartsTable parts={cell.parts} /> : null}
            <AttemptTable
              caption={`Attempts at ${assignment.title}`}
              attempts={attempts}
              timeZone={timeZone}
            />
          </div>
        </Panel>
        {decided !== null ? (
          <DecisionForms
            idPrefix="decide"
            excused={cell.excused}
            timeZone={timeZone}
            actions={decisionsOf({
              studentId,
              assignmentId,
              timeZone,
              openedOn: decided(assignmentId),
            })}
          />
        ) : null}
        {trail === null ? null : (
          <Panel
            title="What was decided"
            actions={
              mayTeach && last !== undefined ? (
                <ConfirmAction
                  action={undo.bind(null, { studentId, assignmentId, auditId: last.id })}
                  title="Undo the last decision?"
                  description={undoText(trailWords(last, timeZone))}
                  confirmLabel="Undo it"
                  busyLabel="Undoing"
                >
                  Undo the last one…
                </ConfirmAction>
              ) : undefined
            }
          >
            <CellTrail lines={trail.lines} timeZone={timeZone} />
          </Panel>
        )}
      </div>
    </>
  );
}

const undoText = ({ what, before, after }: ReturnType<typeof trailWords>): string =>
  `${what}: ${after} becomes ${before} again. The line stays, and the undoing is written above it.`;
