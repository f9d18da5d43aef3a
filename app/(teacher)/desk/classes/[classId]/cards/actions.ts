'use server';

import { revalidatePath } from 'next/cache';
import { z } from 'zod';
import { getViewer } from '@/lib/auth/session';
import { idSchema } from '@/lib/data/ids';
import { failure, type Result } from '@/lib/data/result';
import { issueCards, type SignInCard } from '@/lib/data/roster';
import { routes } from '@/lib/routes';

const whichSchema = z.union([z.enum(['all', 'without-card']), z.array(idSchema).min(1).max(1000)]);

/** The words leave the server here, once; they are not kept. */
export async function makeCards(classId: unknown, which: unknown): Promise<Result<SignInCard[]>> {
  const parsed = z.tuple([idSchema, whichSchema]).safeParse([classId, which]);
  if (!parsed.success) return failure('bad-input', 'Choose at least one student.', 'which');
  const [id, chosen] = parsed.data;
  const cards = await issueCards(await getViewer(), id, chosen);
  if (cards.ok) revalidatePath(routes.teacher.classRoster(id));
  return cards;
}
