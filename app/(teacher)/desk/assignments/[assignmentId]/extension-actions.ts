'use server';

import { revalidatePath } from 'next/cache';
import { z } from 'zod';
import type { FormAnswer } from '@/components/desk/action-form';
import { getViewer } from '@/lib/auth/session';
import { extendDueOf } from '@/lib/data/assignment-extensions';
import { getAssignment } from '@/lib/data/assignments';
import { parsedId } from '@/lib/data/ids';
import { routes } from '@/lib/routes';
import { done, readForm, refused } from '../../read-form';
import { typedDue } from '../../typed-due';

/** "student <id> <when their own due time was last changed, or none>", or of a group, as the form sends it. */
const whoSchema = z
  .string()
  .regex(/^(student|group) \S{1,100} \S{1,40}$/, 'Choose a student or a group.')
  .transform((text) => {
    const [kind, id = '', changedAt = 'none'] = text.split(' ');
    return {
      kind: kind === 'group' ? ('group' as const) : ('student' as const),
      id,
      openedOn: changedAt === 'none' ? null : changedAt,
    };
  });
const formSchema = z.object({
  who: whoSchema,
  date: z.string(),
  time: z.string(),
  note: z.string(),
});

const show = (): void => {
  revalidatePath(routes.teacher.desk(), 'layout');
};

/** A due time of their own for a student or a group, on the clock of the class. */
export async function giveMoreTime(
  sentId: unknown,
  _before: FormAnswer,
  formData: FormData,
): Promise<FormAnswer> {
  const assignmentId = parsedId(sentId);
  const form = readForm(formSchema, formData);
  if (!form.ok) return form.answer;
  const viewer = await getViewer();
  const assignment = await getAssignment(viewer, assignmentId);
  const due = typedDue(form.value, assignment?.dueTimeZone ?? 'UTC');
  if (!due.ok) return refused(due.problem, form.kept);
  if (due.dueAt === null) {
    const message = 'Give the date and the time that it is due for them.';
    return refused({ code: 'no-due', message, field: 'date' }, form.kept);
  }
  const { who, note } = form.value;
  const given = await extendDueOf(viewer, { ...who, assignmentId, dueAt: due.dueAt, note });
  if (!given.ok) {
    if (given.problem.code === 'changed-meanwhile') show();
    const { field } = given.problem;
    return refused(
      field === 'dueAt' ? { ...given.problem, field: 'date' } : given.problem,
      form.kept,
    );
  }
  show();
  return done('Given: it holds from now on.');
}

/** Takes one of them back; the class's due time, or another group's, holds again. */
export async function takeTimeBack(sentId: unknown, who: unknown): Promise<FormAnswer> {
  const assignmentId = parsedId(sentId);
  const parsed = whoSchema.safeParse(who);
  if (!parsed.success)
    return refused({ code: 'bad-input', message: 'This page is out of date. Load it again.' }, {});
  const taken = await extendDueOf(await getViewer(), {
    ...parsed.data,
    assignmentId,
    dueAt: null,
    note: 'Taken back.',
  });
  if (!taken.ok) {
    if (taken.problem.code === 'changed-meanwhile') show();
    return refused(taken.problem, {});
  }
  show();
  return done('Taken back.');
}
