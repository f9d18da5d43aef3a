'use server';

import { revalidatePath } from 'next/cache';
import { z } from 'zod';
import type { FormAnswer } from '@/components/desk/action-form';
import { getViewer } from '@/lib/auth/session';
import { parsedId } from '@/lib/data/ids';
import { setSignOffLevel } from '@/lib/data/sign-off-sheet';
import { routes } from '@/lib/routes';
import { done, readForm, refused } from '../../../read-form';

const levelChoice = z.object({ level: z.enum(['3', '4']) });

export async function chooseSignOffLevel(
  sentClassId: unknown,
  _before: FormAnswer,
  formData: FormData,
): Promise<FormAnswer> {
  const classId = parsedId(sentClassId);
  const form = readForm(levelChoice, formData);
  if (!form.ok) return form.answer;
  const chosen = await setSignOffLevel(await getViewer(), classId, Number(form.value.level));
  if (!chosen.ok) return refused(chosen.problem, form.kept);
  revalidatePath(routes.teacher.classSignOff(classId));
  return { ...done('Saved. What was noted is counted anew.'), kept: form.kept };
}
