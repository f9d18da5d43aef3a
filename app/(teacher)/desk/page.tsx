import type { Metadata } from 'next';
import Link from 'next/link';
import { EmptyState } from '@/components/ui/empty-state';
import { LinkButton } from '@/components/ui/link-button';
import { PageHeader } from '@/components/ui/page-header';
import { TableFrame } from '@/components/ui/table-frame';
import { getViewer } from '@/lib/auth/session';
import { listClasses } from '@/lib/data/classes';
import { routes } from '@/lib/routes';
import { codeText, roleText } from '@/components/desk/class-text';

export const metadata: Metadata = { title: 'Desk' };

export default async function DeskPage() {
  const classes = await listClasses(await getViewer());
  const newClass = (
    <LinkButton variant="primary" href={routes.teacher.newClass()}>
      Create a class
    </LinkButton>
  );
  return (
    <>
      <PageHeader
        title="Desk"
        lead="Your classes."
        actions={classes.length === 0 ? undefined : newClass}
      />
      {classes.length === 0 ? (
        <EmptyState title="No class yet. Three steps lead to the first mark" action={newClass}>
          <ol className="list-decimal space-y-1 ps-5">
            <li>Create a class and list the students: first names or pseudonyms will do.</li>
            <li>Print their sign-in cards. Nobody needs an email address.</li>
            <li>
              Set a task for your town and a coming evening, look at the answer key, and publish it.
            </li>
          </ol>
        </EmptyState>
      ) : (
        <TableFrame caption="Your classes" captionHidden tall>
          <thead>
            <tr>
              <th scope="col">Class</th>
              <th scope="col">Code</th>
              <th scope="col" className="number">
                Students
              </th>
              <th scope="col" className="number">
                Assignments
              </th>
              <th scope="col">You are</th>
            </tr>
          </thead>
          <tbody>
            {classes.map((entry) => (
              <tr key={entry.id}>
                <th scope="row">
                  <Link className="link text-base" href={routes.teacher.classGradebook(entry.id)}>
                    {entry.name}
                  </Link>
                  {entry.isDemo ? (
                    <span className="ms-2 border border-strong px-1.5 text-xs font-normal text-soft">
                      demonstration
                    </span>
                  ) : null}
                </th>
                <td className="font-figures whitespace-nowrap">{codeText(entry.code)}</td>
                <td className="number">{entry.studentCount}</td>
                <td className="number">{entry.assignmentCount}</td>
                <td>{roleText[entry.role]}</td>
              </tr>
            ))}
          </tbody>
        </TableFrame>
      )}
    </>
  );
}
