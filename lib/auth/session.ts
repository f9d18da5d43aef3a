import 'server-only';
import type { Result } from '../data/result';
import type { Viewer } from './policy';

export type SessionSummary = {
  id: string;
  createdAt: string;
  lastSeenAt: string;
  /** "Firefox on Windows": from the browser's own words, never an address. */
  device: string;
  current: boolean;
};

/** Who is asking; looked up once per request. */
export async function getViewer(): Promise<Viewer> {
  throw new Error('not written yet');
}
export async function signInStudent(input: {
  classCode: string;
  cardNumber: number | string;
  words: string;
}): Promise<Result<{ studentId: string }>> {
  throw new Error('not written yet');
}
export async function signInTeacher(input: {
  email: string;
  password: string;
}): Promise<Result<{ teacherId: string }>> {
  throw new Error('not written yet');
}
export async function signOut(): Promise<void> {
  throw new Error('not written yet');
}
export type NewTeacher = { token: string; displayName: string; email: string; password: string };
/** Signs the new teacher in as well. */
export async function createFirstTeacher(input: NewTeacher): Promise<Result<{ teacherId: string }>> {
  throw new Error('not written yet');
}
export async function acceptInvitation(input: NewTeacher): Promise<Result<{ teacherId: string }>> {
  throw new Error('not written yet');
}
export async function listSessions(viewer: Viewer): Promise<SessionSummary[]> {
  throw new Error('not written yet');
}
export async function endSession(viewer: Viewer, id: string): Promise<Result<null>> {
  throw new Error('not written yet');
}
