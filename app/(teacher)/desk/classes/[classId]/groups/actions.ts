'use server';

import { revalidatePath } from 'next/cache';
import { getViewer } from '@/lib/auth/session';
import { saveGroups, type ClassGroups, type GroupsInput } from '@/lib/data/groups';
import type { Result } from '@/lib/data/result';
import { routes } from '@/lib/routes';

export async function storeGroups(
  classId: string,
  input: GroupsInput,
): Promise<Result<ClassGroups>> {
  const saved = await saveGroups(await getViewer(), classId, input);
  // The page itself holds the newest already; the others of the class ask again.
  if (saved.ok) revalidatePath(routes.teacher.classGradebook(classId), 'layout');
  return saved;
}
