import { LinkButton } from '@/components/ui/link-button';
import { Notice } from '@/components/ui/notice';
import type { Viewer } from '@/lib/auth/policy';
import { homeOf } from '../../home-of';

/** On a shared computer the last one may have forgotten to sign out. */
export function AlreadySignedIn({ viewer }: { viewer: Exclude<Viewer, { kind: 'anonymous' }> }) {
  return (
    <div className="mb-8 max-w-[44rem]">
      <Notice title={`${viewer.displayName} is signed in here`}>
        <p>
          If that is you, go on. If not, sign in below with your own card: this ends the other
          sign-in.
        </p>
        <p>
          <LinkButton href={homeOf(viewer)}>Go on as {viewer.displayName}</LinkButton>
        </p>
      </Notice>
    </div>
  );
}
