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
  const teaches = details.role === 'owner' || details.role === 'teacher';
  const atWork = details.archivedAt === null;
  return {
    details,
    viewer: await getViewer(),
    /** May change things: never once the class is archived. */
    mayTeach: teaches && atWork,
    /** May take files away and see accommodations: archived or not. */
    mayTakeOut: teaches,
    /** May let one student in with new words. */
    mayLetIn: atWork && details.role !== 'observer',
    /** Decides what becomes of the class: archived or not. */
    mayOwn: details.role === 'owner',
  };
}
