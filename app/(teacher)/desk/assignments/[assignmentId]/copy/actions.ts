'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { z } from 'zod';
import type { FormAnswer } from '@/components/desk/action-form';
import { getViewer } from '@/lib/auth/session';
import { copyAssignment } from '@/lib/data/assignment-copy';
import { getClass } from '@/lib/data/classes';
import { parsedId } from '@/lib/data/ids';
import { routes } from '@/lib/routes';
import { readForm, refused } from '../../../read-form';
import { typedDue } from '../../../typed-due';

const formSchema = z.object({
  classId: z.string().max(60),
  title: z.string(),
  date: z.string(),
  time: z.string(),
});

/** A draft of the assignment in the chosen class; its due time is on that class's clock. */
export async function makeCopy(
  sentId: unknown,
  _before: FormAnswer,
  formData: FormData,
): Promise<FormAnswer> {
  const assignmentId = parsedId(sentId);
  const form = readForm(formSchema, formData);
  if (!form.ok) return form.answer;
  const { classId, title, date, time } = form.value;
  const viewer = await getViewer();
  const target = await getClass(viewer, classId);
  const due = typedDue({ date, time }, target?.timeZone ?? 'UTC');
  if (!due.ok) return refused(due.problem, form.kept);
  const copied = await copyAssignment(viewer, assignmentId, { classId, title, dueAt: due.dueAt });
  if (!copied.ok) {
    const { field } = copied.problem;
    return refused(
      field === 'dueAt' ? { ...copied.problem, field: 'date' } : copied.problem,
      form.kept,
    );
  }
  revalidatePath(routes.teacher.classAssignments(classId));
  redirect(routes.teacher.assignment(copied.value.assignmentId));
}
