'use server';

import { revalidatePath } from 'next/cache';
import { z } from 'zod';
import { getViewer } from '@/lib/auth/session';
import { failure, type Result } from '@/lib/data/result';
import { letStudentIn, type ScreenCard } from '@/lib/data/student-unlock';
import { routes } from '@/lib/routes';

const idSchema = z.string().min(1).max(100);

/** The words leave the server here, once; they are not kept. */
export async function letIn(classId: string, studentId: string): Promise<Result<ScreenCard>> {
  const parsed = idSchema.safeParse(studentId);
  if (!parsed.success) return failure('bad-input', 'Choose the student first.');
  const card = await letStudentIn(await getViewer(), parsed.data);
  if (card.ok) revalidatePath(routes.teacher.classRoster(classId));
  return card;
}
