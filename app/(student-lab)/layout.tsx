import type { ReactNode } from 'react';
import { redirect } from 'next/navigation';
import { getViewer } from '@/lib/auth/session';
import { routes } from '@/lib/routes';
import { PageFrame } from '../page-frame';

/** As the student's other pages, but the lab gets the whole width. The guard itself is in lib/data. */
export default async function StudentLabLayout({ children }: { children: ReactNode }) {
  const viewer = await getViewer();
  if (viewer.kind === 'teacher') redirect(routes.teacher.desk());
  if (viewer.kind === 'anonymous') redirect(routes.signIn.student());
  return <PageFrame width="full">{children}</PageFrame>;
}
