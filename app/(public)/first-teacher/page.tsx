import type { Metadata } from 'next';
import { EmptyState } from '@/components/ui/empty-state';
import { LinkButton } from '@/components/ui/link-button';
import { PageHeader } from '@/components/ui/page-header';
import { hasTeachers } from '@/lib/data/invitations';
import { routes } from '@/lib/routes';
import { makeFirstAccount } from '../new-teacher-actions';
import { NewTeacherForm } from '../new-teacher-form';

export const metadata: Metadata = { title: 'The first account' };

export default async function FirstTeacherPage() {
  if (await hasTeachers()) {
    return (
      <>
        <PageHeader title="The first account" />
        <EmptyState
          title="It has been made already"
          action={
            <LinkButton href={routes.signIn.teacher()} variant="primary">
              Sign in to your desk
            </LinkButton>
          }
        >
          <p>
            This Duskbench has a teacher. To join, ask a colleague who has an account for an
            invitation: it is a link that works once, for seven days.
          </p>
        </EmptyState>
      </>
    );
  }
  return (
    <>
      <PageHeader
        title="The first account"
        lead="For whoever runs this Duskbench. From here you make classes and invite colleagues."
      />
      <NewTeacherForm action={makeFirstAccount} />
    </>
  );
}
