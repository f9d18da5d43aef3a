import { cache } from 'react';
import { notFound } from 'next/navigation';
import { getViewer } from '@/lib/auth/session';
import { getClass } from '@/lib/data/classes';

/** One look-up per request, for the layout and the page in it. */
const readClass = cache(async (classId: string) => getClass(await getViewer(), classId));

/** The class that the address names, as far as the viewer may see it; "nothing here" otherwise. */
export async function classOf(params: Promise<{ classId: string }>) {
  const { classId } = await params;
  const details = await readClass(classId);
  if (details === null) notFound();
  return {
    details,
    viewer: await getViewer(),
    mayTeach: details.role !== 'observer',
    mayOwn: details.role === 'owner',
  };
}
