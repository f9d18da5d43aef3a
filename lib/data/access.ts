import 'server-only';
import type { ClassAccess, Viewer } from '../auth/policy';
import { db } from './db';

/** What lib/auth/policy.ts needs to know of a class. */
export const classAccessSelect = {
  id: true,
  members: { select: { teacherId: true, role: true } },
  archivedAt: true,
} as const;

/** Whether the viewer may do with this class what `can` asks; false too when there is no such class. */
export async function mayWithClass(
  viewer: Viewer,
  classId: string,
  can: (viewer: Viewer, schoolClass: ClassAccess) => boolean,
): Promise<boolean> {
  const schoolClass = await db().class.findUnique({
    where: { id: classId },
    select: classAccessSelect,
  });
  return schoolClass !== null && can(viewer, schoolClass);
}

/** The student's class, when the viewer may do with it what `can` asks; else null. */
export async function classOfStudent(
  viewer: Viewer,
  studentId: string,
  can: (viewer: Viewer, schoolClass: ClassAccess) => boolean,
): Promise<string | null> {
  const student = await db().student.findUnique({
    where: { id: studentId },
    select: { class: { select: classAccessSelect } },
  });
  return student !== null && can(viewer, student.class) ? student.class.id : null;
}

/** The assignment's class, when the viewer may do with it what `can` asks; else null. */
export async function classOfAssignment(
  viewer: Viewer,
  assignmentId: string,
  can: (viewer: Viewer, schoolClass: ClassAccess) => boolean,
): Promise<string | null> {
  const assignment = await db().assignment.findUnique({
    where: { id: assignmentId },
    select: { class: { select: classAccessSelect } },
  });
  return assignment !== null && can(viewer, assignment.class) ? assignment.class.id : null;
}

/** The teacher's id for the audit; policy has already refused everybody else. */
export const teacherIdOf = (viewer: Viewer): string | null =>
  viewer.kind === 'teacher' ? viewer.teacherId : null;
