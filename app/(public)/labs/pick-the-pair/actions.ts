'use server';

import { z } from 'zod';
import type { PairResult } from '@/lib/grading/pair-result';
import { labTasks } from '@/lib/data/lab-tasks/lab-tasks';
import type { Place } from '@/lib/data/places';
import { searchPlaces } from '@/lib/data/places';
import { gradeVisitorRound } from '@/lib/data/practice-round';
import type { Result } from '@/lib/data/result';

const roundSchema = z.strictObject({
  seed: z.string().min(1).max(100),
  kitId: z.string().max(60),
  siteId: z.string().max(60),
  placeId: z.number().int().min(0),
  localTime: z.string().max(40),
});

/** Towns for the form. Anyone may ask: the list is open data. */
export async function findPlacesForVisitor(query: unknown): Promise<Place[]> {
  const parsed = z.string().min(2).max(100).safeParse(query);
  return parsed.success ? searchPlaces(parsed.data) : [];
}

/** Makes the round again from its address and marks the answer. Nothing is kept. */
export async function gradeRound(
  round: unknown,
  sent: unknown,
): Promise<Result<{ result: PairResult | null; late: boolean }>> {
  const parsed = roundSchema.safeParse(round);
  const submission = z.object({ submission: z.unknown() }).safeParse(sent);
  if (!parsed.success || !submission.success) {
    return {
      ok: false,
      problem: {
        code: 'bad-input',
        message: 'This answer cannot be read. Reload the page and try again.',
      },
    };
  }
  const graded = await gradeVisitorRound(
    labTasks['pick-the-pair'],
    parsed.data,
    submission.data.submission,
  );
  return graded.ok ? { ok: true, value: { result: graded.value, late: false } } : graded;
}
