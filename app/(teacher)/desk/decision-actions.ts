'use server';

import { revalidatePath } from 'next/cache';
import { z } from 'zod';
import type { FormAnswer } from '@/components/desk/action-form';
import { joinLocalTime } from '@/components/desk/local-time-text';
import { readNumber } from '@/components/desk/read-number';
import { getViewer } from '@/lib/auth/session';
import { excuse, extendDue, overrideMark } from '@/lib/data/gradebook';
import { idSchema } from '@/lib/data/ids';
import type { Problem } from '@/lib/data/result';
import { routes } from '@/lib/routes';
import { instantOfLocalTime } from '@/lib/sky/local-time';
import { localTimeProblem } from './moment-text';
import { done, readForm, refused } from './read-form';

const targetSchema = z.object({
  studentId: idSchema,
  assignmentId: idSchema,
  timeZone: z.string(),
  openedOn: z.object({ override: z.string().nullable(), due: z.string().nullable() }),
});

/** A decision shows on the pages of its student, its assignment, its cell and the class. */
function show(): void {
  revalidatePath(routes.teacher.desk(), 'layout');
}

/** Shows a colleague's newer decision beside what was typed. */
function notSaved(problem: Problem, kept: FormAnswer['kept']): FormAnswer {
  if (problem.code === 'nothing-changed') return { problem: null, said: problem.message, kept };
  if (problem.code === 'changed-meanwhile') show();
  return refused(problem, kept);
}

/** An empty mark takes the teacher's own mark back. */
export async function decideMark(
  target: unknown,
  _before: FormAnswer,
  formData: FormData,
): Promise<FormAnswer> {
  const { studentId, assignmentId, openedOn } = targetSchema.parse(target);
  const form = readForm(z.object({ mark: z.string(), note: z.string() }), formData);
  if (!form.ok) return form.answer;
  const typed = form.value.mark.trim();
  const mark = typed === '' ? null : readNumber(typed);
  if (typeof mark === 'string') {
    return refused(
      {
        code: 'bad-input',
        message: 'Give the mark as a number from 0 to 100, or leave it empty.',
        field: 'mark',
      },
      form.kept,
    );
  }
  const decided = await overrideMark(await getViewer(), {
    studentId,
    assignmentId,
    mark,
    note: form.value.note,
    openedOn: openedOn.override,
  });
  if (!decided.ok) return notSaved(decided.problem, form.kept);
  show();
  return done(
    mark === null
      ? 'The computed mark counts again.'
      : 'Your mark stands; the computed one is kept beside it.',
  );
}

export async function decideExcuse(
  target: unknown,
  _before: FormAnswer,
  formData: FormData,
): Promise<FormAnswer> {
  const { studentId, assignmentId, openedOn } = targetSchema.parse(target);
  const form = readForm(z.object({ excused: z.enum(['yes', 'no']), note: z.string() }), formData);
  if (!form.ok) return form.answer;
  const excused = form.value.excused === 'yes';
  const decided = await excuse(await getViewer(), {
    studentId,
    assignmentId,
    excused,
    note: form.value.note,
    openedOn: openedOn.override,
  });
  if (!decided.ok) return notSaved(decided.problem, form.kept);
  show();
  return done(excused ? 'Excused: it does not count.' : 'It counts again.');
}

/** Both fields empty take the extension back. */
export async function decideDue(
  target: unknown,
  _before: FormAnswer,
  formData: FormData,
): Promise<FormAnswer> {
  const { studentId, assignmentId, timeZone, openedOn } = targetSchema.parse(target);
  const form = readForm(
    z.object({ date: z.string(), time: z.string(), note: z.string() }),
    formData,
  );
  if (!form.ok) return form.answer;
  const { date, time, note } = form.value;
  if ((date === '') !== (time === '')) {
    return refused(
      {
        code: 'half-due',
        message: 'Give both the date and the time, or leave both empty.',
        field: date === '' ? 'date' : 'time',
      },
      form.kept,
    );
  }
  let dueAt: string | null = null;
  if (date !== '') {
    const localTime = joinLocalTime(date, time, null);
    const resolved = instantOfLocalTime(localTime, timeZone);
    if (!resolved.ok) {
      const { message, candidates } = localTimeProblem(resolved, localTime, timeZone);
      const hint =
        candidates.length === 0
          ? ''
          : ` (${candidates.map((candidate) => candidate.label).join(', ')})`;
      return refused(
        { code: resolved.reason, message: `${message}${hint}`, field: 'time' },
        form.kept,
      );
    }
    dueAt = resolved.instant;
  }
  const decided = await extendDue(await getViewer(), {
    studentId,
    assignmentId,
    dueAt,
    note,
    openedOn: openedOn.due,
  });
  if (!decided.ok) {
    const { field } = decided.problem;
    return notSaved(
      field === 'dueAt' ? { ...decided.problem, field: 'date' } : decided.problem,
      form.kept,
    );
  }
  show();
  return done(
    dueAt === null
      ? 'The class’s due time holds again.'
      : 'The new due time holds for this student.',
  );
}
