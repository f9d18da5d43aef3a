import type { Metadata } from 'next';
import { OutsideSheet } from '@/components/desk/sign-off/outside-sheet';

export const metadata: Metadata = { title: 'Sign-off outside', robots: { index: false } };

/**
 * What the service worker shows in place of the sign-off page where there is no connection. It is the same
 * for everybody: what it shows comes from the device, if a teacher has kept a class there.
 */
export default function OutsidePage() {
  return (
    <main id="main" className="mx-auto max-w-[76rem] px-4 pt-4 pb-36">
      <OutsideSheet />
    </main>
  );
}
