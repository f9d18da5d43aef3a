'use server';

import { revalidatePath } from 'next/cache';
import { z } from 'zod';
import { getViewer } from '@/lib/auth/session';
import { failure, type Result } from '@/lib/data/result';
import {
  removeStudent,
  renameStudent,
  setExtraAttempts,
  setExtraTime,
  setLeft,
} from '@/lib/data/roster';
import {
  commitRoster,
  previewRoster,
  takeBackImport,
  type ImportOutcome,
  type RosterPreview,
} from '@/lib/data/roster-import';
import { routes } from '@/lib/routes';

const idSchema = z.string().min(1).max(100);
const incomplete = () =>
  failure('bad-input', 'The request arrived incomplete. Reload the page and try again.');

/** A list comes as an unknown: it is parsed where it is used, with a sentence for each fault. */
export async function previewImport(
  classId: string,
  list: unknown,
): Promise<Result<RosterPreview>> {
  const parsed = idSchema.safeParse(classId);
  if (!parsed.success) return incomplete();
  return previewRoster(await getViewer(), parsed.data, list);
}

export async function commitImport(
  classId: string,
  list: unknown,
  fingerprint: string,
): Promise<Result<ImportOutcome>> {
  const parsed = z.tuple([idSchema, z.string().max(100)]).safeParse([classId, fingerprint]);
  if (!parsed.success) return incomplete();
  const [id, previewed] = parsed.data;
  const imported = await commitRoster(await getViewer(), id, list, previewed);
  if (imported.ok) revalidatePath(routes.teacher.classRoster(classId));
  return imported;
}

export async function takeBack(classId: string, undo: unknown): Promise<Result<null>> {
  const parsed = idSchema.safeParse(classId);
  if (!parsed.success) return incomplete();
  const taken = await takeBackImport(await getViewer(), parsed.data, undo);
  if (taken.ok) revalidatePath(routes.teacher.classRoster(classId));
  return taken;
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

/** Has left the class, or is back in it. */
export async function markLeft(
  classId: string,
  studentId: string,
  left: boolean,
): Promise<Result<null>> {
  const parsed = z.tuple([idSchema, z.boolean()]).safeParse([studentId, left]);
  if (!parsed.success) return incomplete();
  const marked = await setLeft(await getViewer(), ...parsed.data);
  if (marked.ok) revalidatePath(routes.teacher.classRoster(classId));
  return marked;
}
