import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { ActionForm } from '@/components/desk/action-form';
import { zonedTimeText } from '@/components/grading/zoned-time';
import { PageHeader } from '@/components/ui/page-header';
import { getViewer } from '@/lib/auth/session';
import { getAssignment } from '@/lib/data/assignments';
import { listClasses } from '@/lib/data/classes';
import { routes } from '@/lib/routes';
import { makeCopy } from './actions';

export const metadata: Metadata = { title: 'Copy an assignment' };

export default async function CopyPage({ params }: { params: Promise<{ assignmentId: string }> }) {
  const { assignmentId } = await params;
  const viewer = await getViewer();
  const assignment = await getAssignment(viewer, assignmentId);
  if (assignment === null || !assignment.canEdit) notFound();
  const classes = (await listClasses(viewer)).filter(
    ({ role, archivedAt }) => (role === 'owner' || role === 'teacher') && archivedAt === null,
  );
  const { dueAt } = assignment.policy;
  return (
    <>
      <PageHeader
        title={`Copy “${assignment.title}”`}
        lead="The copy is a draft with the same parts, lessons, evening and rules. Nobody’s work, marks or extra time go along."
        crumbs={[
          { label: 'Desk', href: routes.teacher.desk() },
          { label: assignment.title, href: routes.teacher.assignment(assignmentId) },
        ]}
      />
      <ActionForm
        idPrefix="copy"
        action={makeCopy.bind(null, assignmentId)}
        fields={[
          {
            name: 'classId',
            label: 'Into which class',
            type: 'select',
            defaultValue: assignment.classId,
            options: classes.map(({ id, name }) => ({
              value: id,
              label: id === assignment.classId ? `${name} (the same)` : name,
            })),
          },
          { name: 'title', label: 'Title', type: 'text', defaultValue: assignment.title },
          {
            name: 'date',
            label: 'Due date of the copy',
            hint: `${
              dueAt === null
                ? 'The first has no due time.'
                : `The first is due ${zonedTimeText(dueAt, assignment.dueTimeZone)}.`
            } Both empty: none for now; set it before you publish.`,
            type: 'date',
            optional: true,
          },
          {
            name: 'time',
            label: 'Due time of the copy',
            hint: 'On the clock of the class that it goes to.',
            type: 'time',
            optional: true,
          },
        ]}
        submitLabel="Make the copy"
        busyLabel="Copying"
        variant="primary"
      />
    </>
  );
}
