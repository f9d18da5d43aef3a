'use server';

import { revalidatePath } from 'next/cache';
import { z } from 'zod';
import { changePassword, endSession, getViewer } from '@/lib/auth/session';
import { inviteTeacher } from '@/lib/data/invitations';
import { takeBackInvitation } from '@/lib/data/open-invitations';
import { failure, type Result } from '@/lib/data/result';
import { routes } from '@/lib/routes';
import type { FormAnswer } from '@/components/desk/action-form';
import { done, readForm, refused } from '../read-form';

export async function endOne(_before: FormAnswer, formData: FormData): Promise<FormAnswer> {
  const form = readForm(z.object({ sessionId: z.string() }), formData);
  if (!form.ok) return form.answer;
  const ended = await endSession(await getViewer(), form.value.sessionId);
  if (!ended.ok) return refused(ended.problem, {});
  revalidatePath(routes.teacher.account());
  return done('Signed out there.');
}

const passwordsSchema = z.object({ oldPassword: z.string(), newPassword: z.string() });

export async function changeOwnPassword(
  _before: FormAnswer,
  formData: FormData,
): Promise<FormAnswer> {
  const form = readForm(passwordsSchema, formData);
  if (!form.ok) return { ...form.answer, kept: {} };
  const changed = await changePassword(await getViewer(), form.value);
  if (!changed.ok) return refused(changed.problem, {});
  revalidatePath(routes.teacher.account());
  return done('Changed. You are signed out everywhere else.');
}

const invitationSchema = z.object({
  classId: z.string().max(100).nullable(),
  role: z.enum(['teacher', 'observer']),
});

/** The path alone leaves the server, once: whoever has it can open an account. */
export async function invite(input: unknown): Promise<Result<{ path: string; expiresAt: string }>> {
  const parsed = invitationSchema.safeParse(input);
  if (!parsed.success) return failure('bad-input', 'Choose a class and a role.');
  const invited = await inviteTeacher(await getViewer(), parsed.data);
  if (!invited.ok) return invited;
  revalidatePath(routes.teacher.account());
  return {
    ok: true,
    value: { path: routes.invitation(invited.value.token), expiresAt: invited.value.expiresAt },
  };
}

export async function takeBackLink(invitationId: unknown): Promise<FormAnswer> {
  const taken = await takeBackInvitation(await getViewer(), invitationId);
  if (!taken.ok) return refused(taken.problem, {});
  revalidatePath(routes.teacher.account());
  return done('Taken back.');
}
