'use server';

import { z } from 'zod';
import type { CheckState } from '@/lib/content/check-state';
import { gradeCheckItem, type CheckRefusal } from '@/lib/content/grade-check-item';
import { getLesson } from '@/lib/content/lessons';

const answerForm = z.object({
  lesson: z.string().max(100),
  item: z.string().max(100),
  answer: z.string().max(100).default(''),
  reveal: z.literal('yes').optional(),
});

const refusals: Record<CheckRefusal['code'], string> = {
  'no-answer': 'Give an answer first.',
  'not-a-number':
    'That is not a number in the unit shown. Write figures only, such as 35 or 2.5, and no comma for thousands.',
  'unknown-option': 'That answer is not one of those on the page. Choose one of them.',
};

/** Marks one question of a lesson. Nothing is stored, and nobody need be signed in. */
export async function answerCheck(state: CheckState, form: FormData): Promise<CheckState> {
  const tries = state.tries + 1;
  const parsed = answerForm.safeParse(Object.fromEntries(form));
  const lesson = parsed.success ? await getLesson(parsed.data.lesson) : null;
  const asked =
    lesson === null || !parsed.success
      ? undefined
      : [...lesson.frontMatter.retrieval, ...lesson.frontMatter.checks].find(
          ({ item }) => item.id === parsed.data.item,
        );
  if (!parsed.success || lesson === null || asked === undefined) {
    const refusal = 'This question has changed. Load the page again to get the new one.';
    return { tries, answer: '', feedback: null, refusal };
  }
  const { answer, reveal } = parsed.data;
  const outcome = gradeCheckItem(asked.item, answer, lesson.reckoning, reveal === 'yes');
  return outcome.ok
    ? { tries, answer, feedback: outcome.feedback, refusal: null }
    : { tries, answer, feedback: null, refusal: refusals[outcome.refusal.code] };
}
