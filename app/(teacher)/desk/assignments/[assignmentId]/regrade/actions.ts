'use server';

import { revalidatePath } from 'next/cache';
import type { FormAnswer } from '@/components/desk/action-form';
import { getViewer } from '@/lib/auth/session';
import { parsedId } from '@/lib/data/ids';
import { acceptRegrade } from '@/lib/data/regrade';
import { routes } from '@/lib/routes';
import { done, refused } from '../../../read-form';

const ticked = (formData: FormData, name: string): string[] =>
  formData.getAll(name).flatMap((value) => (typeof value === 'string' ? [value] : []));

/** Takes over what was ticked. Which marks come out is reckoned anew on the server. */
export async function takeOver(
  sentId: unknown,
  _before: FormAnswer,
  formData: FormData,
): Promise<FormAnswer> {
  const assignmentId = parsedId(sentId);
  const regraded = await acceptRegrade(await getViewer(), {
    assignmentId,
    accepted: ticked(formData, 'accept'),
    lowered: ticked(formData, 'lower'),
  });
  if (!regraded.ok) return refused(regraded.problem, {});
  revalidatePath(routes.teacher.desk(), 'layout');
  const { changed, notLowered } = regraded.value;
  return done(
    `${changed === 1 ? 'One mark was' : `${String(changed)} marks were`} taken over.${
      notLowered === 0 ? '' : ` ${String(notLowered)} would have been lowered and stay.`
    }`,
  );
}
