'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import type { FormAnswer } from '@/components/desk/action-form';
import { getViewer } from '@/lib/auth/session';
import {
  deleteAssignment,
  getAssignment,
  publishAssignment,
  releaseFeedback,
} from '@/lib/data/assignments';
import { parsedId } from '@/lib/data/ids';
import { routes } from '@/lib/routes';
import { done, refused } from '../../read-form';

export async function publish(sentId: unknown): Promise<FormAnswer> {
  const assignmentId = parsedId(sentId);
  const published = await publishAssignment(await getViewer(), assignmentId);
  // The due time is changed on the form, not here.
  if (!published.ok)
    return refused({ code: published.problem.code, message: published.problem.message }, {});
  revalidatePath(routes.teacher.assignment(assignmentId), 'layout');
  return done('Published: students see it now.');
}

export async function release(sentId: unknown): Promise<FormAnswer> {
  const assignmentId = parsedId(sentId);
  const released = await releaseFeedback(await getViewer(), assignmentId);
  if (!released.ok) return refused(released.problem, {});
  revalidatePath(routes.teacher.assignment(assignmentId), 'layout');
  return done('Released: students see marks and feedback now.');
}

export async function removeAssignment(sentId: unknown): Promise<FormAnswer> {
  const assignmentId = parsedId(sentId);
  const viewer = await getViewer();
  const assignment = await getAssignment(viewer, assignmentId);
  const deleted = await deleteAssignment(viewer, assignmentId);
  if (!deleted.ok) return refused(deleted.problem, {});
  if (assignment === null) redirect(routes.teacher.desk());
  revalidatePath(routes.teacher.classAssignments(assignment.classId));
  redirect(routes.teacher.classAssignments(assignment.classId));
}
