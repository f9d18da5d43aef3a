import type { Viewer } from '../auth/policy';
import type { ClassRole } from './classes';
import type { Clock } from './clock';
import type { Result } from './result';

export type InvitationPreview = {
  kind: 'first-teacher' | 'teacher';
  className: string | null;
  role: ClassRole | null;
  expiresAt: string;
};

/** A one-use token, seven days; the address is built from it by lib/routes. */
export async function inviteTeacher(
  viewer: Viewer,
  input: { classId: string | null; role: 'teacher' | 'observer' },
  clock?: Clock,
): Promise<Result<{ token: string; expiresAt: string }>> {
  throw new Error('not written yet');
}
/** What a token opens; null when it is unknown, used or out of date. */
export async function readInvitation(token: string, clock?: Clock): Promise<InvitationPreview | null> {
  throw new Error('not written yet');
}
/** For the start command: a fresh token while there is no teacher, else null. */
export async function issueFirstTeacherToken(clock?: Clock): Promise<string | null> {
  throw new Error('not written yet');
}
export async function hasTeachers(): Promise<boolean> {
  throw new Error('not written yet');
}
