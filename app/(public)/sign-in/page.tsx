import type { Metadata } from 'next';
import { PageHeader } from '@/components/ui/page-header';
import { TextLink } from '@/components/ui/text-link';
import { getViewer } from '@/lib/auth/session';
import { routes } from '@/lib/routes';
import { AlreadySignedIn } from './already-signed-in';
import { CardForm } from './card-form';
import { CardPicture } from './card-picture';

export const metadata: Metadata = { title: 'Sign in with your card' };

export default async function StudentSignInPage() {
  const viewer = await getViewer();
  return (
    <>
      <PageHeader
        title="Sign in with your card"
        lead="Everything you need is on the card from your teacher."
      />
      {viewer.kind === 'anonymous' ? null : <AlreadySignedIn viewer={viewer} />}
      <div className="grid gap-x-16 gap-y-12 lg:grid-cols-[minmax(0,28rem)_minmax(0,26rem)]">
        <CardForm />
        <aside aria-label="Help with the card" className="space-y-5">
          <CardPicture />
          <div className="max-w-measure space-y-2 text-sm text-soft">
            <p>
              Card lost, or somebody else has seen the words? Your teacher prints a new one in a
              minute. The old words stop working, your work stays.
            </p>
            <p>
              On a computer that others use, sign out when you leave. Nothing you type here is kept
              by this page.
            </p>
            <p>
              Are you the teacher?{' '}
              <TextLink href={routes.signIn.teacher()}>Sign in with email and password</TextLink>
            </p>
          </div>
        </aside>
      </div>
    </>
  );
}
