import 'server-only';
import { canTeachClass, type Viewer } from '../auth/policy';
import { classOfStudent, mayWithClass } from './access';
import { db } from './db';

/**
 * When a student's decisions at an assignment were last changed (UTC, ISO 8601), for the forms that change
 * them: so that none takes the place of a colleague's unseen. Null: there is none.
 */
export type DecisionTimes = {
  /** The mark set by hand and the excuse. */
  override: string | null;
  /** The student's own due time; a group's is not meant. */
  due: string | null;
};
const none: DecisionTimes = { override: null, due: null };

/** For those who may decide; asked by an assignment's id. */
export async function getDecisionTimes(
  viewer: Viewer,
  studentId: string,
): Promise<((assignmentId: string) => DecisionTimes) | null> {
  if ((await classOfStudent(viewer, studentId, canTeachClass)) === null) return null;
  const select = { assignmentId: true, changedAt: true } as const;
  const where = { studentId };
  const [overrides, extensions] = await Promise.all([
    db().override.findMany({ where, select }),
    db().extension.findMany({ where, select }),
  ]);
  const times = new Map<string, DecisionTimes>();
  for (const { assignmentId, changedAt } of overrides)
    times.set(assignmentId, { ...none, override: changedAt.toISOString() });
  for (const { assignmentId, changedAt } of extensions)
    times.set(assignmentId, {
      ...(times.get(assignmentId) ?? none),
      due: changedAt.toISOString(),
    });
  return (assignmentId) => times.get(assignmentId) ?? none;
}

/** {@link DecisionTimes.override} of a whole class, where there is one, by "<student id> <assignment id>". */
export async function getOverrideTimes(
  viewer: Viewer,
  classId: string,
): Promise<Readonly<Record<string, string>>> {
  if (!(await mayWithClass(viewer, classId, canTeachClass))) return {};
  const rows = await db().override.findMany({
    where: { student: { classId } },
    select: { studentId: true, assignmentId: true, changedAt: true },
  });
  return Object.fromEntries(
    rows.map(({ studentId, assignmentId, changedAt }) => [
      `${studentId} ${assignmentId}`,
      changedAt.toISOString(),
    ]),
  );
}
