'use server';

import { revalidatePath } from 'next/cache';
import { z } from 'zod';
import type { FormAnswer } from '@/components/desk/action-form';
import { getViewer } from '@/lib/auth/session';
import { writeComment } from '@/lib/data/comments';
import { parsedId } from '@/lib/data/ids';
import type { Problem } from '@/lib/data/result';
import { giveBack, takeBack } from '@/lib/data/returned-work';
import { routes } from '@/lib/routes';
import { done, readForm, refused } from '../../read-form';

const show = (): void => {
  revalidatePath(routes.teacher.desk(), 'layout');
};

/** Of the comment that the form shows; empty: there was none. */
const openedOn = z.string().transform((text) => (text === '' ? null : text));

/** Shows a colleague's newer comment beside what was typed. */
function notSaved(problem: Problem, kept: FormAnswer['kept']): FormAnswer {
  if (problem.code === 'changed-meanwhile') show();
  return refused(problem, kept);
}

export async function comment(
  sentId: unknown,
  _before: FormAnswer,
  formData: FormData,
): Promise<FormAnswer> {
  const attemptId = parsedId(sentId);
  const form = readForm(z.object({ criterion: z.string(), text: z.string(), openedOn }), formData);
  if (!form.ok) return form.answer;
  const written = await writeComment(await getViewer(), { attemptId, ...form.value });
  if (!written.ok) return notSaved(written.problem, form.kept);
  show();
  return done(form.value.text.trim() === '' ? 'Taken away.' : 'Saved.');
}

export async function returnWork(
  sentId: unknown,
  _before: FormAnswer,
  formData: FormData,
): Promise<FormAnswer> {
  const attemptId = parsedId(sentId);
  const form = readForm(z.object({ text: z.string(), openedOn }), formData);
  if (!form.ok) return form.answer;
  const given = await giveBack(await getViewer(), { attemptId, ...form.value });
  if (!given.ok) return notSaved(given.problem, form.kept);
  show();
  return done('Given back.');
}

export async function undoReturn(sentId: unknown): Promise<FormAnswer> {
  const attemptId = parsedId(sentId);
  const taken = await takeBack(await getViewer(), attemptId);
  if (!taken.ok) return refused(taken.problem, {});
  show();
  return done('Taken back.');
}
