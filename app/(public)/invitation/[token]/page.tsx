import type { Metadata } from 'next';
import { z } from 'zod';
import { EmptyState } from '@/components/ui/empty-state';
import { LinkButton } from '@/components/ui/link-button';
import { PageHeader } from '@/components/ui/page-header';
import { readInvitation, type InvitationPreview } from '@/lib/data/invitations';
import { routes } from '@/lib/routes';
import { makeInvitedAccount } from '../../new-teacher-actions';
import { NewTeacherForm } from '../../new-teacher-form';

export const metadata: Metadata = {
  title: 'Invitation',
  // The address holds a secret that works once.
  robots: { index: false, follow: false },
  referrer: 'no-referrer',
};

const paramsSchema = z.object({ token: z.string().max(200) });

/** What the invited colleague may do, in their words. */
function leadFor({ className, role }: InvitationPreview): string {
  if (className === null) return 'You are invited to make classes of your own here.';
  return role === 'observer'
    ? `You are invited to look on in the class ${className}: you see everything and change nothing.`
    : `You are invited to teach the class ${className}.`;
}

export default async function InvitationPage({ params }: { params: Promise<unknown> }) {
  const parsed = paramsSchema.safeParse(await params);
  const invitation = parsed.success ? await readInvitation(parsed.data.token) : null;
  if (!parsed.success || invitation?.kind !== 'teacher') {
    return (
      <>
        <PageHeader title="Invitation" />
        <EmptyState
          title="This invitation does not open any more"
          action={<LinkButton href={routes.signIn.teacher()}>Sign in to your desk</LinkButton>}
        >
          <p>
            It works once and for seven days, so it may have been used or run out. Or it was taken
            back, its class has been archived, or the link was cut short on its way. Ask the
            colleague who sent it.
          </p>
        </EmptyState>
      </>
    );
  }
  return (
    <>
      <PageHeader title="Welcome to Duskbench" lead={leadFor(invitation)} />
      <div className="max-w-md space-y-5">
        <p className="text-sm text-soft">
          If you have an account here already, give its e-mail and password: the class is added to
          your desk.
        </p>
        <NewTeacherForm action={makeInvitedAccount} token={parsed.data.token} />
      </div>
    </>
  );
}
