import type { Viewer } from '../auth/policy';
import type { Result } from './result';

export type RosterRow = {
  studentId: string;
  cardNumber: number;
  displayName: string;
  hasCard: boolean;
  /** UTC, ISO 8601. */
  lastSeenAt: string | null;
  extraAttempts: number;
};
/** Printed once: the words are not kept. */
export type SignInCard = {
  studentId: string;
  displayName: string;
  cardNumber: number;
  words: string;
  classCode: string;
  className: string;
};

export async function listRoster(viewer: Viewer, classId: string): Promise<RosterRow[] | null> {
  throw new Error('not written yet');
}
export async function addStudents(
  viewer: Viewer,
  classId: string,
  names: readonly string[],
): Promise<Result<{ added: number; studentIds: string[] }>> {
  throw new Error('not written yet');
}
export async function renameStudent(viewer: Viewer, studentId: string, name: string): Promise<Result<null>> {
  throw new Error('not written yet');
}
export async function setExtraAttempts(
  viewer: Viewer,
  studentId: string,
  extraAttempts: number,
): Promise<Result<null>> {
  throw new Error('not written yet');
}
/** Deletes the student with all attempts and marks. */
export async function removeStudent(viewer: Viewer, studentId: string): Promise<Result<null>> {
  throw new Error('not written yet');
}
/** Everything that is kept about one student, for the student or the family. */
export async function exportStudent(viewer: Viewer, studentId: string): Promise<object | null> {
  throw new Error('not written yet');
}
/** New secrets; the old ones and every session opened with them end. */
export async function issueCards(
  viewer: Viewer,
  classId: string,
  which: readonly string[] | 'all' | 'without-card',
): Promise<Result<SignInCard[]>> {
  throw new Error('not written yet');
}
