import { cache } from 'react';
import { notFound } from 'next/navigation';
import { getViewer } from '@/lib/auth/session';
import { getClass, type ClassDetails } from '@/lib/data/classes';

/** One look-up per request, for the layout and the page in it. */
const readClass = cache(async (classId: string) => getClass(await getViewer(), classId));

/** The class that the address names, as far as the viewer may see it; "nothing here" otherwise. */
export async function classOf(params: Promise<{ classId: string }>) {
  const { classId } = await params;
  const details = await readClass(classId);
  if (details === null) notFound();
  return { details, viewer: await getViewer(), ...rightsIn(details) };
}

/** What a page offers to whoever looks at it. The guard itself is in lib/data. */
export function rightsIn({ role, archivedAt }: Pick<ClassDetails, 'role' | 'archivedAt'>) {
  const teaches = role === 'owner' || role === 'teacher';
  return {
    /** May change things: never once the class is archived. */
    mayTeach: teaches && archivedAt === null,
    /** May take files away and see accommodations: archived or not. */
    mayTakeOut: teaches,
    /** Decides what becomes of the class: archived or not. */
    mayOwn: role === 'owner',
  };
}
