'use server';

import { revalidatePath } from 'next/cache';
import { z } from 'zod';
import type { FormAnswer } from '@/components/desk/action-form';
import { getViewer } from '@/lib/auth/session';
import { idSchema } from '@/lib/data/ids';
import { recordObservations } from '@/lib/data/observations';
import { routes } from '@/lib/routes';
import { done, refused } from '../../../../read-form';

const shownSchema = z.object({ classId: idSchema, studentId: idSchema, skill: idSchema });

/** It stays in the class's trail. */
export async function takeBackObservation(shown: unknown, key: unknown): Promise<FormAnswer> {
  const { classId, studentId, skill } = shownSchema.parse(shown);
  const item = { kind: 'take-back', key, restores: [] };
  const answered = await recordObservations(await getViewer(), classId, [item]);
  if (!answered.ok) return refused(answered.problem, {});
  revalidatePath(routes.teacher.studentSkill(studentId, skill));
  return done('Taken back.');
}
