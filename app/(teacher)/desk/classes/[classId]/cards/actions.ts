'use server';

import { revalidatePath } from 'next/cache';
import { z } from 'zod';
import { getViewer } from '@/lib/auth/session';
import { failure, type Result } from '@/lib/data/result';
import { issueCards, type SignInCard } from '@/lib/data/roster';
import { routes } from '@/lib/routes';

const whichSchema = z.union([
  z.enum(['all', 'without-card']),
  z.array(z.string().min(1).max(100)).min(1).max(1000),
]);

/** The words leave the server here, once; they are not kept. */
export async function makeCards(
  classId: string,
  which: string[] | 'all' | 'without-card',
): Promise<Result<SignInCard[]>> {
  const parsed = z.tuple([z.string().min(1).max(100), whichSchema]).safeParse([classId, which]);
  if (!parsed.success) return failure('bad-input', 'Choose at least one student.', 'which');
  const cards = await issueCards(await getViewer(), ...parsed.data);
  if (cards.ok) revalidatePath(routes.teacher.classRoster(classId));
  return cards;
}
