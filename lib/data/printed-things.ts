import 'server-only';
import { canSeeClass, type Viewer } from '../auth/policy';
import { mayWithClass } from './access';
import { db } from './db';

export type PrintedThings = {
  /** The newest first: an answer key each. */
  assignments: { id: string; title: string; isDraft: boolean }[];
  /** By card number, those who left last: a report each. */
  students: { id: string; displayName: string; hasLeft: boolean }[];
};

/** What of the class can be printed one by one; null for whoever may not see it. */
export async function getPrintedThings(
  viewer: Viewer,
  classId: string,
): Promise<PrintedThings | null> {
  if (!(await mayWithClass(viewer, classId, canSeeClass))) return null;
  const [assignments, students] = await Promise.all([
    db().assignment.findMany({
      where: { classId },
      orderBy: { createdAt: 'desc' },
      select: { id: true, title: true, state: true },
    }),
    db().student.findMany({
      where: { classId },
      orderBy: { cardNumber: 'asc' },
      select: { id: true, displayName: true, leftAt: true },
    }),
  ]);
  return {
    assignments: assignments.map(({ id, title, state }) => ({
      id,
      title,
      isDraft: state === 'draft',
    })),
    students: students
      .map(({ id, displayName, leftAt }) => ({ id, displayName, hasLeft: leftAt !== null }))
      .toSorted((a, b) => Number(a.hasLeft) - Number(b.hasLeft)),
  };
}
