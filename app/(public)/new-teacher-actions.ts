'use server';

import { redirect } from 'next/navigation';
import { z } from 'zod';
import { acceptInvitation, createFirstTeacher } from '@/lib/auth/session';
import type { Problem } from '@/lib/data/result';
import { routes } from '@/lib/routes';

const typed = z.string().trim().max(200).catch('');
const newTeacherSchema = z.object({
  token: typed,
  displayName: typed,
  email: typed,
  // Not trimmed: a space may belong to it.
  password: z.string().max(1000).catch(''),
});

export type NewTeacherState = {
  problem: Problem | null;
  kept: { token: string; displayName: string; email: string };
};

async function join(
  create: typeof createFirstTeacher,
  formData: FormData,
): Promise<NewTeacherState> {
  const { password, ...kept } = newTeacherSchema.parse(Object.fromEntries(formData));
  const created = await create({ ...kept, password });
  if (!created.ok) return { problem: created.problem, kept };
  redirect(routes.teacher.desk());
}

/** With the token that the start command shows once. */
export async function makeFirstAccount(
  _before: NewTeacherState,
  formData: FormData,
): Promise<NewTeacherState> {
  return join(createFirstTeacher, formData);
}

/** With the token of an invitation's address. */
export async function makeInvitedAccount(
  _before: NewTeacherState,
  formData: FormData,
): Promise<NewTeacherState> {
  return join(acceptInvitation, formData);
}
