'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { z } from 'zod';
import type { FormAnswer } from '@/components/desk/action-form';
import { codeText } from '@/components/desk/class-text';
import { getViewer } from '@/lib/auth/session';
import { archiveClass, takeBackClass } from '@/lib/data/archive';
import {
  deleteClass,
  getClass,
  renameClass,
  rotateClassCode,
  setIdleSignOut,
  setRetentionDate,
} from '@/lib/data/classes';
import { parsedId } from '@/lib/data/ids';
import { routes } from '@/lib/routes';
import { done, readForm, refused } from '../../../read-form';

export async function rename(
  sentClassId: unknown,
  _before: FormAnswer,
  formData: FormData,
): Promise<FormAnswer> {
  const classId = parsedId(sentClassId);
  const form = readForm(z.object({ name: z.string() }), formData);
  if (!form.ok) return form.answer;
  const renamed = await renameClass(await getViewer(), classId, form.value.name);
  if (!renamed.ok) return refused(renamed.problem, form.kept);
  revalidatePath(routes.teacher.classGradebook(classId), 'layout');
  return { ...done('Renamed.'), kept: form.kept };
}

export async function newCode(sentClassId: unknown): Promise<FormAnswer> {
  const classId = parsedId(sentClassId);
  const rotated = await rotateClassCode(await getViewer(), classId);
  if (!rotated.ok) return refused(rotated.problem, {});
  revalidatePath(routes.teacher.classGradebook(classId), 'layout');
  return done(`The class code is now ${codeText(rotated.value.code)}.`);
}

const idleChoice = z.object({ idle: z.enum(['usual', '10', '20', '40']) });

export async function chooseIdle(
  sentClassId: unknown,
  _before: FormAnswer,
  formData: FormData,
): Promise<FormAnswer> {
  const classId = parsedId(sentClassId);
  const form = readForm(idleChoice, formData);
  if (!form.ok) return form.answer;
  const minutes = form.value.idle === 'usual' ? null : Number(form.value.idle);
  const chosen = await setIdleSignOut(await getViewer(), classId, minutes);
  if (!chosen.ok) return refused({ ...chosen.problem, field: 'idle' }, form.kept);
  revalidatePath(routes.teacher.classSettings(classId));
  return { ...done('Saved.'), kept: form.kept };
}

export async function chooseRetention(
  sentClassId: unknown,
  _before: FormAnswer,
  formData: FormData,
): Promise<FormAnswer> {
  const classId = parsedId(sentClassId);
  const form = readForm(z.object({ retentionDate: z.string() }), formData);
  if (!form.ok) return form.answer;
  const chosen = await setRetentionDate(await getViewer(), classId, form.value.retentionDate);
  if (!chosen.ok) return refused(chosen.problem, form.kept);
  revalidatePath(routes.teacher.classSettings(classId));
  return { ...done('Saved.'), kept: form.kept };
}

export async function archive(sentClassId: unknown): Promise<FormAnswer> {
  const classId = parsedId(sentClassId);
  const archived = await archiveClass(await getViewer(), classId);
  if (!archived.ok) return refused(archived.problem, {});
  revalidatePath(routes.teacher.desk());
  revalidatePath(routes.teacher.classGradebook(classId), 'layout');
  return done('Archived.');
}

export async function takeBack(sentClassId: unknown): Promise<FormAnswer> {
  const classId = parsedId(sentClassId);
  const taken = await takeBackClass(await getViewer(), classId);
  if (!taken.ok) return refused(taken.problem, {});
  revalidatePath(routes.teacher.desk());
  revalidatePath(routes.teacher.classGradebook(classId), 'layout');
  return done('Taken back.');
}

/** The name must be typed: a wrong click must not delete a class. */
export async function removeClass(
  sentClassId: unknown,
  _before: FormAnswer,
  formData: FormData,
): Promise<FormAnswer> {
  const classId = parsedId(sentClassId);
  const form = readForm(z.object({ typedName: z.string() }), formData);
  if (!form.ok) return form.answer;
  const viewer = await getViewer();
  const details = await getClass(viewer, classId);
  if (details !== null && form.value.typedName.trim() !== details.name) {
    return refused(
      {
        code: 'name-differs',
        message: `Type the name exactly as it stands: ${details.name}`,
        field: 'typedName',
      },
      form.kept,
    );
  }
  const deleted = await deleteClass(viewer, classId);
  if (!deleted.ok) return refused(deleted.problem, form.kept);
  revalidatePath(routes.teacher.desk());
  redirect(routes.teacher.desk());
}
