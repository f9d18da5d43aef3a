import type { z } from 'zod';
import type { FormAnswer } from '@/components/desk/action-form';
import type { Problem } from '@/lib/data/result';

type ReadForm<T> =
  | { ok: true; value: T; kept: Readonly<Record<string, string>> }
  | { ok: false; answer: FormAnswer };

/** Reads a form's text fields with a schema; what was typed is kept for the form to show again. */
export function readForm<T>(schema: z.ZodType<T>, formData: FormData): ReadForm<T> {
  const kept: Record<string, string> = {};
  for (const [name, value] of formData) {
    if (typeof value === 'string' && !name.startsWith('$')) kept[name] = value;
  }
  const parsed = schema.safeParse(kept);
  if (parsed.success) return { ok: true, value: parsed.data, kept };
  const issue = parsed.error.issues[0];
  return {
    ok: false,
    answer: refused(
      {
        code: 'bad-input',
        message: issue?.message ?? 'The form arrived incomplete. Try again.',
        field: issue?.path.map(String).join('.'),
      },
      kept,
    ),
  };
}

export const refused = (problem: Problem, kept: Readonly<Record<string, string>>): FormAnswer => ({
  problem,
  said: null,
  kept,
});

export const done = (said: string): FormAnswer => ({ problem: null, said, kept: {} });
