'use server';

import { revalidatePath } from 'next/cache';
import { z } from 'zod';
import { getViewer } from '@/lib/auth/session';
import { idSchema } from '@/lib/data/ids';
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

const idsSchema = z.tuple([idSchema, idSchema]);
const incomplete = () =>
  failure('bad-input', 'The request arrived incomplete. Reload the page and try again.');

/** The roster shows what was done. */
function shown<T>(classId: string, result: Result<T>): Result<T> {
  if (result.ok) revalidatePath(routes.teacher.classRoster(classId));
  return result;
}

/** A list comes as an unknown: it is parsed where it is used, with a sentence for each fault. */
export async function previewImport(
  classId: unknown,
  list: unknown,
): Promise<Result<RosterPreview>> {
  const parsed = idSchema.safeParse(classId);
  if (!parsed.success) return incomplete();
  return previewRoster(await getViewer(), parsed.data, list);
}

export async function commitImport(
  classId: unknown,
  list: unknown,
  fingerprint: unknown,
): Promise<Result<ImportOutcome>> {
  const parsed = z.tuple([idSchema, z.string().max(100)]).safeParse([classId, fingerprint]);
  if (!parsed.success) return incomplete();
  const [id, previewed] = parsed.data;
  return shown(id, await commitRoster(await getViewer(), id, list, previewed));
}

export async function takeBack(classId: unknown, undo: unknown): Promise<Result<null>> {
  const parsed = idSchema.safeParse(classId);
  if (!parsed.success) return incomplete();
  return shown(parsed.data, await takeBackImport(await getViewer(), parsed.data, undo));
}

export async function rename(
  classId: unknown,
  studentId: unknown,
  name: unknown,
): Promise<Result<null>> {
  const parsed = z
    .tuple([idSchema, idSchema, z.string().max(1000)])
    .safeParse([classId, studentId, name]);
  if (!parsed.success) return incomplete();
  const [id, student, newName] = parsed.data;
  return shown(id, await renameStudent(await getViewer(), student, newName));
}

export async function allowExtraAttempts(
  classId: unknown,
  studentId: unknown,
  extra: unknown,
): Promise<Result<null>> {
  const parsed = z.tuple([idSchema, idSchema, z.number()]).safeParse([classId, studentId, extra]);
  if (!parsed.success) return incomplete();
  const [id, student, more] = parsed.data;
  return shown(id, await setExtraAttempts(await getViewer(), student, more));
}

export async function allowExtraTime(
  classId: unknown,
  studentId: unknown,
  extraTime: unknown,
): Promise<Result<null>> {
  const parsed = idsSchema.safeParse([classId, studentId]);
  if (!parsed.success) return incomplete();
  const [id, student] = parsed.data;
  return shown(id, await setExtraTime(await getViewer(), student, extraTime));
}

export async function remove(classId: unknown, studentId: unknown): Promise<Result<null>> {
  const parsed = idsSchema.safeParse([classId, studentId]);
  if (!parsed.success) return incomplete();
  const [id, student] = parsed.data;
  return shown(id, await removeStudent(await getViewer(), student));
}

/** Has left the class, or is back in it. */
export async function markLeft(
  classId: unknown,
  studentId: unknown,
  left: unknown,
): Promise<Result<null>> {
  const parsed = z.tuple([idSchema, idSchema, z.boolean()]).safeParse([classId, studentId, left]);
  if (!parsed.success) return incomplete();
  const [id, student, hasLeft] = parsed.data;
  return shown(id, await setLeft(await getViewer(), student, hasLeft));
}
