import type { Metadata } from 'next';
import { PageHeader } from '@/components/ui/page-header';
import { TextLink } from '@/components/ui/text-link';
import { getViewer } from '@/lib/auth/session';
import { routes } from '@/lib/routes';
import { AlreadySignedIn } from '../already-signed-in';
import { PasswordForm } from './password-form';

export const metadata: Metadata = { title: 'Teacher sign-in' };

export default async function TeacherSignInPage() {
  const viewer = await getViewer();
  return (
    <>
      <PageHeader title="Sign in to your desk" lead="For teachers, with email and password." />
      {viewer.kind === 'anonymous' ? null : <AlreadySignedIn viewer={viewer} />}
      <div className="grid gap-x-16 gap-y-12 lg:grid-cols-[minmax(0,28rem)_minmax(0,26rem)]">
        <PasswordForm />
        <aside aria-label="Other ways in" className="max-w-measure space-y-3 text-sm text-soft">
          <p>
            No account yet? A colleague who has one can invite you from the account page. The very
            first account of a school is made with the token that the start command shows:{' '}
            <TextLink href={routes.firstTeacher()}>make the first account</TextLink>.
          </p>
          <p>
            Here to do a lab?{' '}
            <TextLink href={routes.signIn.student()}>Sign in with your card</TextLink>
          </p>
        </aside>
      </div>
    </>
  );
}
