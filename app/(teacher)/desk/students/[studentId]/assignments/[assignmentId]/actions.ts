'use server';

import { revalidatePath } from 'next/cache';
import { z } from 'zod';
import type { FormAnswer } from '@/components/desk/action-form';
import { getViewer } from '@/lib/auth/session';
import { undoLastDecision } from '@/lib/data/audit-trail';
import { idSchema } from '@/lib/data/ids';
import { routes } from '@/lib/routes';
import { done, refused } from '../../../../read-form';

const targetSchema = z.object({
  studentId: idSchema,
  assignmentId: idSchema,
  auditId: idSchema,
});

/** Undoes the decision that the page showed as the last one. */
export async function undo(target: unknown): Promise<FormAnswer> {
  const undone = await undoLastDecision(await getViewer(), targetSchema.parse(target));
  // A refusal shows the newer decision as well: the page that asked is behind.
  revalidatePath(routes.teacher.desk(), 'layout');
  if (!undone.ok) return refused(undone.problem, {});
  return done('Undone.');
}
