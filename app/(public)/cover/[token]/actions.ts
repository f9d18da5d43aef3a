'use server';

import { redirect } from 'next/navigation';
import type { FormAnswer } from '@/components/desk/action-form';
import { signInCover } from '@/lib/auth/session';
import { routes } from '@/lib/routes';

/** Signs the substitute in; the browser's sign-in before that, if any, ends. */
export async function openCover(token: unknown): Promise<FormAnswer> {
  const opened = await signInCover(typeof token === 'string' ? token.slice(0, 200) : '');
  if (!opened.ok) return { problem: opened.problem, said: null, kept: {} };
  redirect(routes.teacher.classLive(opened.value.classId));
}
