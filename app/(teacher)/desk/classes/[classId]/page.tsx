import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { NoStudentsYet } from '@/components/desk/people/no-students-yet';
import { GradebookLegend } from '@/components/grading/gradebook/gradebook-legend';
import { GradebookGrid } from '@/components/desk/gradebook/gradebook-grid';
import { gridColumns, gridRows } from '@/components/desk/gradebook/grid-rows';
import { EmptyState } from '@/components/ui/empty-state';
import { LinkButton } from '@/components/ui/link-button';
import { PrintButton } from '@/components/ui/print-button';
import { buttonLook } from '@/components/ui/button-look';
import { getOverrideTimes } from '@/lib/data/decisions-standing';
import { getGradebook } from '@/lib/data/gradebook';
import { routes } from '@/lib/routes';
import { decideMark } from '../../decision-actions';
import { classOf } from './class-of';

export const metadata: Metadata = { title: 'Gradebook' };

export default async function GradebookPage({ params }: { params: Promise<{ classId: string }> }) {
  const { details, viewer, mayTeach, mayTakeOut } = await classOf(params);
  // The times first: a mark that comes in between is then refused rather than replaced.
  const decidedAt = await getOverrideTimes(viewer, details.id);
  const gradebook = await getGradebook(viewer, details.id);
  if (gradebook === null) notFound();
  if (gradebook.students.length === 0) {
    return (
      <NoStudentsYet addAt={mayTeach ? routes.teacher.classRoster(details.id) : null}>
        <p>
          List the class first: type names or take them from a spreadsheet. A pseudonym will do.
        </p>
      </NoStudentsYet>
    );
  }
  if (gradebook.assignments.length === 0) {
    return (
      <EmptyState
        title="Nothing is assigned yet"
        action={
          mayTeach ? (
            <>
              <LinkButton variant="primary" href={routes.teacher.newAssignment(details.id)}>
                New assignment
              </LinkButton>
              <LinkButton href={routes.teacher.classAssignments(details.id)}>Drafts</LinkButton>
            </>
          ) : undefined
        }
      >
        <p>
          Set a task for your town and a coming evening. Once it is published, a column appears here
          with the state and the mark of{' '}
          {gradebook.students.length === 1
            ? 'your student'
            : `your ${gradebook.students.length} students`}
          .
        </p>
      </EmptyState>
    );
  }
  return (
    <div className="space-y-4">
      <div className="flex flex-wrap items-end justify-between gap-3">
        <h2 className="text-xl font-semibold">Gradebook</h2>
        <div className="no-print flex flex-wrap gap-2">
          {mayTakeOut ? (
            // A plain link: it leads to a file, which the router has no page for.
            <a
              className={buttonLook('quiet', 'normal')}
              href={routes.teacher.gradebookFile(details.id)}
              download
            >
              Download with names (CSV)
            </a>
          ) : null}
          <PrintButton />
        </div>
      </div>
      <GradebookGrid
        columns={gridColumns(gradebook, details.timeZone)}
        rows={gridRows(gradebook, details.timeZone)}
        groups={gradebook.groups}
        timeZone={details.timeZone}
        setMark={mayTeach ? decideMark : null}
        decidedAt={decidedAt}
      />
      <p className="text-sm text-soft">Times are on the class’s clock, {details.timeZone}.</p>
      <GradebookLegend />
    </div>
  );
}
