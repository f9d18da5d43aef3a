import type { Viewer } from '../auth/policy';
import type { Clock } from './clock';
import type { Result } from './result';

export type ClassRole = 'owner' | 'teacher' | 'observer';
export type ClassSummary = {
  id: string;
  name: string;
  /** Eight characters, without the dash it is shown with. */
  code: string;
  timeZone: string;
  studentCount: number;
  assignmentCount: number;
  role: ClassRole;
  isDemo: boolean;
};
export type ClassDetails = ClassSummary & {
  /** UTC, ISO 8601: when `purge` may delete the class. */
  retentionDate: string;
  /** The shared-computer sign-out; null when the usual four hours hold. */
  idleSignOutMinutes: number | null;
};

export async function listClasses(viewer: Viewer): Promise<ClassSummary[]> {
  throw new Error(`not written yet ${viewer.kind}`);
}
export async function createClass(
  viewer: Viewer,
  input: { name: string; timeZone: string },
  clock?: Clock,
): Promise<Result<{ classId: string }>> {
  throw new Error('not written yet');
}
export async function getClass(viewer: Viewer, classId: string): Promise<ClassDetails | null> {
  throw new Error('not written yet');
}
export async function renameClass(viewer: Viewer, classId: string, name: string): Promise<Result<null>> {
  throw new Error('not written yet');
}
export async function rotateClassCode(viewer: Viewer, classId: string): Promise<Result<{ code: string }>> {
  throw new Error('not written yet');
}
/** 20 for the shared-computer sign-out, null for the usual four hours. */
export async function setIdleSignOut(
  viewer: Viewer,
  classId: string,
  minutes: number | null,
): Promise<Result<null>> {
  throw new Error('not written yet');
}
/** The date (YYYY-MM-DD) after which the class and all its work may be purged. */
export async function setRetentionDate(
  viewer: Viewer,
  classId: string,
  date: string,
): Promise<Result<null>> {
  throw new Error('not written yet');
}
export async function deleteClass(viewer: Viewer, classId: string): Promise<Result<null>> {
  throw new Error('not written yet');
}
