import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { Notice } from '@/components/ui/notice';
import { PageHeader } from '@/components/ui/page-header';
import { getViewer } from '@/lib/auth/session';
import { getAssignment } from '@/lib/data/assignments';
import { systemClock } from '@/lib/data/clock';
import { routes } from '@/lib/routes';
import { AssignmentCard } from '@/app/(student)/my/assignment-card';
import { untouched } from './student-card';

export const metadata: Metadata = { title: 'As a student sees it' };

export default async function PreviewPage({
  params,
}: {
  params: Promise<{ assignmentId: string }>;
}) {
  const { assignmentId } = await params;
  const assignment = await getAssignment(await getViewer(), assignmentId);
  if (assignment === null) notFound();
  return (
    <>
      <PageHeader
        title={`“${assignment.title}” as a student sees it`}
        crumbs={[
          { label: 'Desk', href: routes.teacher.desk() },
          { label: assignment.title, href: routes.teacher.assignment(assignmentId) },
        ]}
      />
      <div className="space-y-6">
        <Notice title="Nothing of this is kept">
          <p>
            Below is the card among a student’s work. Start a part to do its task yourself: it is
            drawn for you, as each student’s is for them, marked at once by the same rules, and no
            gradebook knows of it.
            {assignment.state === 'draft' ? ' Students do not see the assignment yet.' : ''}
          </p>
        </Notice>
        <h2 className="sr-only">To do</h2>
        <AssignmentCard
          assignment={untouched(assignment)}
          now={systemClock.now()}
          tryAt={(partId) => routes.teacher.partPreview(assignmentId, partId)}
        />
      </div>
    </>
  );
}
