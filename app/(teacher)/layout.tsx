import type { ReactNode } from 'react';
import { redirect } from 'next/navigation';
import { SignOffGuard } from '@/components/desk/sign-off/sign-off-guard';
import { getViewer } from '@/lib/auth/session';
import { routes } from '@/lib/routes';
import { PageFrame } from '../page-frame';

/** Leads whoever is neither a teacher nor covers a class to the right door. The guard itself is in lib/data. */
export default async function TeacherLayout({ children }: { children: ReactNode }) {
  const viewer = await getViewer();
  if (viewer.kind === 'student') redirect(routes.student.myWork());
  if (viewer.kind === 'anonymous') redirect(routes.signIn.teacher());
  return (
    <PageFrame>
      {viewer.kind === 'teacher' ? <SignOffGuard teacherId={viewer.teacherId} /> : null}
      {children}
    </PageFrame>
  );
}
