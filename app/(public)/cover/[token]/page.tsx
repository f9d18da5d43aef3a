import type { Metadata } from 'next';
import { z } from 'zod';
import { ActionForm } from '@/components/desk/action-form';
import { Notice } from '@/components/ui/notice';
import { PageHeader } from '@/components/ui/page-header';
import { getViewer } from '@/lib/auth/session';
import { openCover } from './actions';

export const metadata: Metadata = {
  title: 'Covering a class',
  // The address holds a secret that works for a day.
  robots: { index: false, follow: false },
  referrer: 'no-referrer',
};

const paramsSchema = z.object({ token: z.string().max(200) });

/**
 * Asks before it signs anybody in, and looks nothing up until then: a preview of the link in a chat
 * opens nothing and learns nothing, not even whether the link is good.
 */
export default async function CoverPage({ params }: { params: Promise<unknown> }) {
  const parsed = paramsSchema.safeParse(await params);
  const viewer = await getViewer();
  return (
    <>
      <PageHeader
        title="Covering a class today"
        lead="A teacher has lent you a look into one class, without an account."
      />
      <div className="max-w-measure space-y-5">
        <p>
          You see how the class is getting on and what it was set, and you can let in a student
          whose card is lost. You change nothing else. It ends by itself at the end of the day; sign
          out before that if others use this device.
        </p>
        {viewer.kind === 'anonymous' ? null : (
          <Notice tone="caution" title={`${viewer.displayName} is signed in here`}>
            <p>Opening the class ends that sign-in. Work that was saved stays.</p>
          </Notice>
        )}
        <ActionForm
          idPrefix="cover"
          action={openCover.bind(null, parsed.success ? parsed.data.token : '')}
          variant="primary"
          fields={[]}
          submitLabel="Open the class"
          busyLabel="Opening"
        />
      </div>
    </>
  );
}
