'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { z } from 'zod';
import type { FormAnswer } from '@/components/desk/action-form';
import { getViewer } from '@/lib/auth/session';
import { parsedId } from '@/lib/data/ids';
import { inviteTeacher } from '@/lib/data/invitations';
import { takeBackInvitation } from '@/lib/data/open-invitations';
import { changeRole, handOverClass, removeMember } from '@/lib/data/members';
import { failure, type Result } from '@/lib/data/result';
import { routes } from '@/lib/routes';
import { done, readForm, refused } from '../../../read-form';

const role = z.enum(['teacher', 'observer']);

export async function giveRole(
  sentClassId: unknown,
  sentTeacherId: unknown,
  _before: FormAnswer,
  formData: FormData,
): Promise<FormAnswer> {
  const classId = parsedId(sentClassId);
  const teacherId = parsedId(sentTeacherId);
  const form = readForm(z.object({ from: role, to: role }), formData);
  if (!form.ok) return form.answer;
  const changed = await changeRole(await getViewer(), classId, { teacherId, ...form.value });
  if (!changed.ok) return refused(changed.problem, {});
  revalidatePath(routes.teacher.classSettings(classId));
  return done('');
}

export async function takeOut(sentClassId: unknown, sentTeacherId: unknown): Promise<FormAnswer> {
  const classId = parsedId(sentClassId);
  const teacherId = parsedId(sentTeacherId);
  const removed = await removeMember(await getViewer(), classId, teacherId);
  if (!removed.ok) return refused(removed.problem, {});
  revalidatePath(routes.teacher.classSettings(classId));
  return done('Taken out.');
}

export async function leaveClass(sentClassId: unknown): Promise<FormAnswer> {
  const classId = parsedId(sentClassId);
  const viewer = await getViewer();
  const left = await removeMember(
    viewer,
    classId,
    viewer.kind === 'teacher' ? viewer.teacherId : '',
  );
  if (!left.ok) return refused(left.problem, {});
  revalidatePath(routes.teacher.desk());
  redirect(routes.teacher.desk());
}

export async function handOver(sentClassId: unknown, sentTeacherId: unknown): Promise<FormAnswer> {
  const classId = parsedId(sentClassId);
  const teacherId = parsedId(sentTeacherId);
  const handed = await handOverClass(await getViewer(), classId, teacherId);
  if (!handed.ok) return refused(handed.problem, {});
  revalidatePath(routes.teacher.classGradebook(classId), 'layout');
  return done('Handed over.');
}

const invitationSchema = z.object({ classId: z.string().max(100), role });

/** The path alone leaves the server, once: whoever has it can open an account. */
export async function inviteInto(
  input: unknown,
): Promise<Result<{ path: string; expiresAt: string }>> {
  const parsed = invitationSchema.safeParse(input);
  if (!parsed.success) return failure('bad-input', 'Choose a role.');
  const invited = await inviteTeacher(await getViewer(), parsed.data);
  if (!invited.ok) return invited;
  revalidatePath(routes.teacher.classSettings(parsed.data.classId));
  const { token, expiresAt } = invited.value;
  return { ok: true, value: { path: routes.invitation(token), expiresAt } };
}

export async function takeBackLink(
  sentClassId: unknown,
  invitationId: unknown,
): Promise<FormAnswer> {
  const classId = parsedId(sentClassId);
  const taken = await takeBackInvitation(await getViewer(), invitationId);
  if (!taken.ok) return refused(taken.problem, {});
  revalidatePath(routes.teacher.classSettings(classId));
  return done('Taken back.');
}
