import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { zonedTimeText } from '@/components/grading/zoned-time';
import { markText } from '@/components/grading/mark-text';
import { labText } from '@/components/grading/template-text';
import { EmptyState } from '@/components/ui/empty-state';
import { LinkButton } from '@/components/ui/link-button';
import { TableFrame } from '@/components/ui/table-frame';
import { listAssignments, type AssignmentSummary } from '@/lib/data/assignments';
import { routes } from '@/lib/routes';
import { labOptions } from '@/lib/variants/labs';
import { classOf } from '../class-of';

export const metadata: Metadata = { title: 'Assignments' };

export default async function AssignmentsPage({
  params,
}: {
  params: Promise<{ classId: string }>;
}) {
  const { details, viewer, mayTeach } = await classOf(params);
  const assignments = await listAssignments(viewer, details.id);
  if (assignments === null) notFound();
  const create = mayTeach ? (
    <LinkButton variant="primary" href={routes.teacher.newAssignment(details.id)}>
      New assignment
    </LinkButton>
  ) : undefined;
  if (assignments.length === 0) {
    return (
      <EmptyState title="No assignment yet" action={create}>
        <p>
          Choose “A 45-minute lesson on …”, or put labs and questions together yourself. Each
          student gets tasks of their own under the sky of a place and an evening that you choose,
          and you see the answer key before anybody gets them.
        </p>
      </EmptyState>
    );
  }
  return (
    <div className="space-y-4">
      <div className="flex flex-wrap items-end justify-between gap-3">
        <h2 className="text-xl font-semibold">Assignments</h2>
        {create}
      </div>
      <TableFrame caption="Assignments" captionHidden tall>
        <thead>
          <tr>
            <th scope="col">Title</th>
            <th scope="col">What is marked</th>
            <th scope="col">State</th>
            <th scope="col">Place</th>
            <th scope="col" className="max-sm:hidden">
              Due
            </th>
            <th scope="col" className="number">
              Pass mark
            </th>
            <th scope="col" className="number">
              Attempts under way
            </th>
            <th scope="col" className="number">
              Attempts handed in
            </th>
          </tr>
        </thead>
        <tbody>
          {assignments.map((assignment) => (
            <tr key={assignment.id}>
              <th scope="row">
                <Link className="link" href={routes.teacher.assignment(assignment.id)}>
                  {assignment.title}
                </Link>
                {/* On a phone the column of its own would be out of sight. */}
                <span className="block text-sm font-normal text-soft sm:hidden">
                  {assignment.dueAt === null ? '' : 'due '}
                  {dueText(assignment)}
                </span>
              </th>
              <td>{labsInWords(assignment)}</td>
              <td>
                {assignment.state === 'draft' ? 'draft: students do not see it' : 'published'}
              </td>
              <td>
                {assignment.labs.every((lab) => labOptions[lab].withoutSky === true)
                  ? '–'
                  : assignment.placeName}
              </td>
              <td className="whitespace-nowrap max-sm:hidden">{dueText(assignment)}</td>
              <td className="number">{markText(assignment.passMark)}</td>
              <td className="number">{assignment.attemptsUnderWay}</td>
              <td className="number">{assignment.attemptsSubmitted}</td>
            </tr>
          ))}
        </tbody>
      </TableFrame>
    </div>
  );
}

const dueText = ({ dueAt, dueTimeZone }: AssignmentSummary): string =>
  dueAt === null ? 'no due time' : zonedTimeText(dueAt, dueTimeZone);

/** "Level · Questions on lessons", and what is to be read. */
function labsInWords({ labs, lessonCount }: AssignmentSummary): string {
  const names = labs.map((lab) => labText[lab].name).join(' · ');
  if (lessonCount === 0) return names;
  return `${names}; ${lessonCount === 1 ? 'one lesson' : `${String(lessonCount)} lessons`} to read`;
}
