'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { z } from 'zod';
import type { FormAnswer } from '@/components/desk/action-form';
import { getViewer } from '@/lib/auth/session';
import { createClass } from '@/lib/data/classes';
import { routes } from '@/lib/routes';
import { readForm, refused } from '../../read-form';

const newClassSchema = z.object({ name: z.string(), timeZone: z.string() });

export async function makeClass(_before: FormAnswer, formData: FormData): Promise<FormAnswer> {
  const form = readForm(newClassSchema, formData);
  if (!form.ok) return form.answer;
  const made = await createClass(await getViewer(), {
    ...form.value,
    timeZone: form.value.timeZone.trim(),
  });
  if (!made.ok) return refused(made.problem, form.kept);
  revalidatePath(routes.teacher.desk());
  // The roster comes first: without students there is nothing to set.
  redirect(routes.teacher.classRoster(made.value.classId));
}
