'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { z } from 'zod';
import { getViewer } from '@/lib/auth/session';
import { startAttempt, startPractice } from '@/lib/data/attempts';
import { routes } from '@/lib/routes';
import { labs } from '@/lib/variants/labs';
import type { StartState } from './start-state';

const signedOut: StartState = {
  problem: 'You are no longer signed in on this device. Sign in with your card, then try again.',
};

/** Going back from the lab must show My work as it has become, not the browser's copy of before. */
function goTo(attemptId: string): never {
  revalidatePath(routes.student.myWork());
  redirect(routes.student.attempt(attemptId));
}

const id = z.string().min(1).max(60);
const checkForm = z.object({ assignmentId: id, partId: id });

/** Starts the next attempt at a part of an assignment, or resumes the open one. */
export async function startCheck(_: StartState, form: FormData): Promise<StartState> {
  const parsed = checkForm.safeParse(Object.fromEntries(form));
  if (!parsed.success) return { problem: 'This page is out of date. Load it again.' };
  const { assignmentId, partId } = parsed.data;
  const started = await startAttempt(await getViewer(), assignmentId, partId);
  if (started.ok) goTo(started.value.attemptId);
  return started.problem.code === 'not-found' ? signedOut : { problem: started.problem.message };
}

const practiceForm = z.object({
  lab: z.enum(labs).optional(),
  assignmentId: id.optional(),
  partId: id.optional(),
  kitId: id.optional(),
});

/** A new practice variant each time; it never counts. */
export async function startPracticeRound(_: StartState, form: FormData): Promise<StartState> {
  const parsed = practiceForm.safeParse(Object.fromEntries(form));
  if (!parsed.success) return { problem: 'This page is out of date. Load it again.' };
  const { lab, assignmentId, partId, kitId } = parsed.data;
  const started = await startPractice(await getViewer(), {
    ...(lab === undefined ? {} : { lab }),
    ...(assignmentId === undefined ? {} : { assignmentId }),
    ...(partId === undefined ? {} : { partId }),
    ...(kitId === undefined ? {} : { kitId }),
  });
  if (started.ok) goTo(started.value.attemptId);
  return started.problem.code === 'not-found' ? signedOut : { problem: started.problem.message };
}
