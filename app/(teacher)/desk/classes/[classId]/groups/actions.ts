'use server';

import { revalidatePath } from 'next/cache';
import { getViewer } from '@/lib/auth/session';
import { saveGroups, type ClassGroups } from '@/lib/data/groups';
import { parsedId } from '@/lib/data/ids';
import type { Result } from '@/lib/data/result';
import { routes } from '@/lib/routes';

export async function storeGroups(
  sentClassId: unknown,
  input: unknown,
): Promise<Result<ClassGroups>> {
  const classId = parsedId(sentClassId);
  const saved = await saveGroups(await getViewer(), classId, input);
  // The page itself holds the newest already; the others of the class ask again.
  if (saved.ok) revalidatePath(routes.teacher.classGradebook(classId), 'layout');
  return saved;
}
