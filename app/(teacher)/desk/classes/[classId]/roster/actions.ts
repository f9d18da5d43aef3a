'use server';

import { revalidatePath } from 'next/cache';
import { z } from 'zod';
import { getViewer } from '@/lib/auth/session';
import { failure, type Result } from '@/lib/data/result';
import {
  addStudents,
  removeStudent,
  renameStudent,
  setExtraAttempts,
  setExtraTime,
} from '@/lib/data/roster';
import { routes } from '@/lib/routes';

const idSchema = z.string().min(1).max(100);
const incomplete = () =>
  failure('bad-input', 'The request arrived incomplete. Reload the page and try again.');

export async function addToRoster(
  classId: string,
  names: string[],
): Promise<Result<{ added: number }>> {
  const parsed = z
    .tuple([idSchema, z.array(z.string().max(1000)).max(1000)])
    .safeParse([classId, names]);
  if (!parsed.success) return incomplete();
  const added = await addStudents(await getViewer(), ...parsed.data);
  if (!added.ok) return added;
  revalidatePath(routes.teacher.classRoster(classId));
  return { ok: true, value: { added: added.value.added } };
}

export async function rename(
  classId: string,
  studentId: string,
  name: string,
): Promise<Result<null>> {
  const parsed = z.tuple([idSchema, z.string().max(1000)]).safeParse([studentId, name]);
  if (!parsed.success) return incomplete();
  const renamed = await renameStudent(await getViewer(), ...parsed.data);
  if (renamed.ok) revalidatePath(routes.teacher.classRoster(classId));
  return renamed;
}

export async function allowExtraAttempts(
  classId: string,
  studentId: string,
  extra: number,
): Promise<Result<null>> {
  const parsed = z.tuple([idSchema, z.number()]).safeParse([studentId, extra]);
  if (!parsed.success) return incomplete();
  const allowed = await setExtraAttempts(await getViewer(), ...parsed.data);
  if (allowed.ok) revalidatePath(routes.teacher.classRoster(classId));
  return allowed;
}

export async function allowExtraTime(
  classId: string,
  studentId: string,
  extraTime: string,
): Promise<Result<null>> {
  const parsed = idSchema.safeParse(studentId);
  if (!parsed.success) return incomplete();
  const allowed = await setExtraTime(await getViewer(), parsed.data, extraTime);
  if (allowed.ok) revalidatePath(routes.teacher.classRoster(classId));
  return allowed;
}

export async function remove(classId: string, studentId: string): Promise<Result<null>> {
  const parsed = idSchema.safeParse(studentId);
  if (!parsed.success) return incomplete();
  const removed = await removeStudent(await getViewer(), parsed.data);
  if (removed.ok) revalidatePath(routes.teacher.classRoster(classId));
  return removed;
}
