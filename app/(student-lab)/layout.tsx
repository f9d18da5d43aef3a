import type { ReactNode } from 'react';
import { redirect } from 'next/navigation';
import { getViewer } from '@/lib/auth/session';
import { routes } from '@/lib/routes';
import { homeOf } from '../home-of';
import { PageFrame } from '../page-frame';

/** As the student's other pages, but the lab gets the whole width. The guard itself is in lib/data. */
export default async function StudentLabLayout({ children }: { children: ReactNode }) {
  const viewer = await getViewer();
  if (viewer.kind === 'anonymous') redirect(routes.signIn.student());
  if (viewer.kind !== 'student') redirect(homeOf(viewer));
  return <PageFrame width="full">{children}</PageFrame>;
}
