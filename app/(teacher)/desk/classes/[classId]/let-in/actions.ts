'use server';

import { revalidatePath } from 'next/cache';
import { z } from 'zod';
import { getViewer } from '@/lib/auth/session';
import { idSchema } from '@/lib/data/ids';
import { failure, type Result } from '@/lib/data/result';
import { letStudentIn, type ScreenCard } from '@/lib/data/student-unlock';
import { routes } from '@/lib/routes';

const idsSchema = z.tuple([idSchema, idSchema]);

/** The words leave the server here, once; they are not kept. */
export async function letIn(classId: unknown, studentId: unknown): Promise<Result<ScreenCard>> {
  const parsed = idsSchema.safeParse([classId, studentId]);
  if (!parsed.success) return failure('bad-input', 'Choose the student first.');
  const [id, student] = parsed.data;
  const card = await letStudentIn(await getViewer(), student);
  if (card.ok) revalidatePath(routes.teacher.classRoster(id));
  return card;
}
