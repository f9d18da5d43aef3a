import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AttemptTable } from '@/components/desk/attempt-table';
import { DecisionForms } from '@/components/desk/decision-forms';
import { CellStanding } from '@/components/desk/gradebook/cell-standing';
import { markText } from '@/components/grading/mark-text';
import { PartsTable } from '@/components/grading/gradebook/parts-table';
import { buttonLook } from '@/components/ui/button-look';
import { EmptyState } from '@/components/ui/empty-state';
import { LinkButton } from '@/components/ui/link-button';
import { PageHeader } from '@/components/ui/page-header';
import { Panel } from '@/components/ui/panel';
import { PrintButton } from '@/components/ui/print-button';
import { TextLink } from '@/components/ui/text-link';
import { getViewer } from '@/lib/auth/session';
import { getClass } from '@/lib/data/classes';
import { getDecisionTimes } from '@/lib/data/decisions-standing';
import { getStudentGradebook, getStudentRecord } from '@/lib/data/gradebook';
import { routes } from '@/lib/routes';
import { decisionsOf } from '../../decisions-of';

export const metadata: Metadata = { title: 'Student' };

export default async function StudentPage({ params }: { params: Promise<{ studentId: string }> }) {
  const { studentId } = await params;
  const viewer = await getViewer();
  const record = await getStudentRecord(viewer, studentId);
  if (record === null) notFound();
  const { student, attempts } = record;
  const [details, gradebook, decided] = await Promise.all([
    getClass(viewer, student.classId),
    getStudentGradebook(viewer, { studentId }),
    getDecisionTimes(viewer, studentId),
  ]);
  if (details === null || gradebook === null) notFound();
  const mayTakeOut = details.role === 'owner' || details.role === 'teacher';
  const mean = gradebook.students[0]?.mean ?? null;
  const practice = attempts.filter((attempt) => attempt.mode === 'practice');
  return (
    <>
      <PageHeader
        title={student.displayName}
        lead={`Card ${student.cardNumber} of ${student.className}${gradebook.students[0]?.left === true ? ' · has left' : ''}${mean === null ? '' : ` · mean of what is complete: ${markText(mean)}`}`}
        crumbs={[
          { label: 'Desk', href: routes.teacher.desk() },
          { label: student.className, href: routes.teacher.classGradebook(student.classId) },
        ]}
        actions={
          <>
            {mayTakeOut ? (
              <a
                className={buttonLook('quiet', 'normal')}
                href={routes.teacher.studentFile(student.id)}
                download
              >
                Download data
              </a>
            ) : null}
            {details.role === 'cover' ? null : (
              <LinkButton href={routes.teacher.studentReport(student.id)}>
                For the family
              </LinkButton>
            )}
            <PrintButton />
          </>
        }
      />
      <div className="space-y-6">
        {gradebook.assignments.length === 0 ? (
          <EmptyState title="Nothing is assigned yet">
            <p>Practice shows below as soon as there is some.</p>
          </EmptyState>
        ) : null}
        {gradebook.assignments.map((assignment) => {
          const cell = gradebook.cells.find((entry) => entry.assignmentId === assignment.id);
          if (cell === undefined) return null;
          return (
            <Panel
              key={assignment.id}
              title={
                <TextLink href={routes.teacher.assignment(assignment.id)}>
                  {assignment.title}
                </TextLink>
              }
              actions={
                <LinkButton href={routes.teacher.gradebookCell(student.id, assignment.id)}>
                  What was decided
                </LinkButton>
              }
            >
              <div className="space-y-4">
                <CellStanding {...{ cell, assignment }} timeZone={details.timeZone} />
                {cell.parts.length > 1 ? <PartsTable parts={cell.parts} /> : null}
                <AttemptTable
                  caption={`Attempts at ${assignment.title}`}
                  attempts={attempts.filter(
                    (attempt) => attempt.mode === 'check' && attempt.assignmentId === assignment.id,
                  )}
                  timeZone={details.timeZone}
                />
                {decided !== null ? (
                  <DecisionForms
                    idPrefix={assignment.id}
                    excused={cell.excused}
                    timeZone={details.timeZone}
                    actions={decisionsOf({
                      studentId,
                      assignmentId: assignment.id,
                      timeZone: details.timeZone,
                      openedOn: decided(assignment.id),
                    })}
                  />
                ) : null}
              </div>
            </Panel>
          );
        })}
        <Panel title="Practice">
          <div className="space-y-3">
            <p className="text-soft">Practice is never graded. It shows what has been tried.</p>
            <AttemptTable caption="Practice" attempts={practice} timeZone={details.timeZone} />
          </div>
        </Panel>
      </div>
    </>
  );
}
