import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { ClassTable } from '@/components/desk/class-table';
import { EmptyState } from '@/components/ui/empty-state';
import { LinkButton } from '@/components/ui/link-button';
import { PageHeader } from '@/components/ui/page-header';
import { getViewer } from '@/lib/auth/session';
import { listClasses } from '@/lib/data/classes';
import { routes } from '@/lib/routes';
import { homeOf } from '../../home-of';

export const metadata: Metadata = { title: 'Desk' };

export default async function DeskPage() {
  const viewer = await getViewer();
  if (viewer.kind === 'cover') redirect(homeOf(viewer));
  const classes = await listClasses(viewer);
  const atWork = classes.filter(({ archivedAt }) => archivedAt === null);
  const archived = classes.filter(({ archivedAt }) => archivedAt !== null);
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
      ) : atWork.length === 0 ? (
        <p className="text-soft">None is at work: all of them are archived.</p>
      ) : (
        <ClassTable caption="Your classes" classes={atWork} />
      )}
      {archived.length === 0 ? null : (
        <section aria-labelledby="archived" className="mt-10">
          <h2 id="archived" className="mb-1 text-xl font-semibold">
            Archived
          </h2>
          <p className="mb-3 max-w-measure text-sm text-soft">
            To read and to take out. The owner takes a class back in its settings.
          </p>
          <ClassTable caption="Archived classes" classes={archived} />
        </section>
      )}
    </>
  );
}
