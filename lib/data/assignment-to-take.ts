import 'server-only';
import { canTakeAssignment, type Viewer } from '../auth/policy';
import { classAccessSelect } from './access';
import { partsSelect } from './assignment-parts';
import { db } from './db';
import { extensionsOf } from './due-times';
import { policySelect } from './stored-policy';

/** Selects what starting an attempt has to know. */
const startSelect = (studentId: string) => ({
  id: true,
  title: true,
  state: true,
  dueTimeZone: true,
  ...policySelect,
  class: { select: classAccessSelect },
  parts: partsSelect,
  extensions: extensionsOf(studentId),
});

/** The assignment, when the viewer is a student who may take it; else null. */
export const loadForStart = async (viewer: Viewer, assignmentId: string) => {
  if (viewer.kind !== 'student') return null;
  const assignment = await db().assignment.findUnique({
    where: { id: assignmentId },
    select: startSelect(viewer.studentId),
  });
  return assignment !== null && canTakeAssignment(viewer, assignment) ? assignment : null;
};
