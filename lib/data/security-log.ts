import 'server-only';
import type { Clock } from './clock';
import { db } from './db';

export type SecurityEventKind =
  | 'signed-in'
  | 'sign-in-failed'
  | 'sign-in-throttled'
  | 'signed-out'
  | 'session-ended'
  | 'cards-issued'
  | 'cover-opened'
  | 'invitation-made'
  | 'invitation-taken-back'
  | 'teacher-created'
  | 'password-changed';

/** `subject`: a teacher's, student's or class's id, null when nobody was recognised. No addresses. */
export async function logSecurityEvent(
  kind: SecurityEventKind,
  subject: string | null,
  clock: Clock,
): Promise<void> {
  await db().securityEvent.create({ data: { kind, subject, at: clock.now() } });
}
