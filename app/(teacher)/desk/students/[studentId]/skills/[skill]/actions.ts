'use server';

import { revalidatePath } from 'next/cache';
import type { FormAnswer } from '@/components/desk/action-form';
import { getViewer } from '@/lib/auth/session';
import { recordObservations } from '@/lib/data/observations';
import { routes } from '@/lib/routes';
import { done, refused } from '../../../../read-form';

/** It stays in the class's trail. */
export async function takeBackObservation(
  of: { classId: string; studentId: string; skill: string },
  key: string,
): Promise<FormAnswer> {
  const item = { kind: 'take-back', key, restores: [] };
  const answered = await recordObservations(await getViewer(), of.classId, [item]);
  if (!answered.ok) return refused(answered.problem, {});
  revalidatePath(routes.teacher.studentSkill(of.studentId, of.skill));
  return done('Taken back.');
}
