'use server';

import { revalidatePath } from 'next/cache';
import { z } from 'zod';
import type { FormAnswer } from '@/components/desk/action-form';
import { coverEndText } from '@/components/desk/people/cover-end-text';
import { getViewer } from '@/lib/auth/session';
import { getClass } from '@/lib/data/classes';
import { createCoverLink, endCoverLink } from '@/lib/data/cover';
import { parsedId } from '@/lib/data/ids';
import { notFound, type Result } from '@/lib/data/result';
import { routes } from '@/lib/routes';
import { done, readForm, refused } from '../../../read-form';

/** The path leaves the server here, once. */
export async function makeCoverLink(
  sentClassId: unknown,
): Promise<Result<{ path: string; until: string }>> {
  const classId = parsedId(sentClassId);
  const viewer = await getViewer();
  const details = await getClass(viewer, classId);
  if (details === null) return notFound();
  const made = await createCoverLink(viewer, classId);
  if (!made.ok) return made;
  revalidatePath(routes.teacher.classSettings(classId));
  const { token, expiresAt } = made.value;
  return {
    ok: true,
    value: { path: routes.cover(token), until: coverEndText(expiresAt, details.timeZone) },
  };
}

export async function endCover(
  sentClassId: unknown,
  _before: FormAnswer,
  formData: FormData,
): Promise<FormAnswer> {
  const classId = parsedId(sentClassId);
  const form = readForm(z.object({ coverId: z.string().max(100) }), formData);
  if (!form.ok) return form.answer;
  const ended = await endCoverLink(await getViewer(), form.value.coverId);
  if (!ended.ok) return refused(ended.problem, {});
  revalidatePath(routes.teacher.classSettings(classId));
  return done('Ended.');
}
