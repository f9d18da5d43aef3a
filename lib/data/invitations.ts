import 'server-only';
import { randomBytes } from 'node:crypto';
import { z } from 'zod';
import { classCodeFrom, normaliseClassCode } from '../auth/class-code';
import { hashSecret, secretMatches } from '../auth/passwords';
import { canInviteTeacher, canRunClass, type ClassRole, type Viewer } from '../auth/policy';
import { beginTry } from '../auth/throttle';
import { mayWithClass } from './access';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { isUniqueViolation } from './is-unique-violation';
import { firstField, firstMessage, nameSchema, newPasswordSchema } from './names';
import { failure, notFound, success, type Result } from './result';
import { logSecurityEvent } from './security-log';
import type { TryOrigin } from './sign-in';
import { newToken, tokenHashOf } from './tokens';

const day = 24 * 3600 * 1000;
const invitationDays = 7;

export type InvitationPreview = {
  kind: 'first-teacher' | 'teacher';
  className: string | null;
  role: ClassRole | null;
  /** UTC, ISO 8601. */
  expiresAt: string;
};
export type NewTeacher = { token: string; displayName: string; email: string; password: string };

const rolesOf = async (teacherId: string): Promise<ClassRole[]> =>
  (await db().classMember.findMany({ where: { teacherId }, select: { role: true } })).map(
    ({ role }) => role,
  );

/** A one-use token, seven days; the address is built from it by lib/routes. */
export async function inviteTeacher(
  viewer: Viewer,
  input: { classId: string | null; role: 'teacher' | 'observer' },
  clock: Clock = systemClock,
): Promise<Result<{ token: string; expiresAt: string }>> {
  if (viewer.kind !== 'teacher') return notFound();
  const { classId } = input;
  const { teacherId } = viewer;
  const allowed =
    classId === null
      ? canInviteTeacher(viewer, await rolesOf(teacherId))
      : await mayWithClass(viewer, classId, canRunClass);
  if (!allowed) return notFound();
  const token = newToken();
  const now = clock.now();
  const expiresAt = new Date(now.getTime() + invitationDays * day);
  await db().invitation.create({
    data: {
      kind: 'teacher',
      tokenHash: tokenHashOf(token),
      classId,
      role: classId === null ? null : input.role,
      invitedById: teacherId,
      createdAt: now,
      expiresAt,
    },
  });
  await logSecurityEvent('invitation-made', teacherId, clock);
  return success({ token, expiresAt: expiresAt.toISOString() });
}

/** A first teacher's token is typed from a console; an invitation's comes in a link. */
const hashesOf = (token: string): string[] => [
  tokenHashOf(token.trim()),
  tokenHashOf(normaliseClassCode(token)),
];

/** Into an archived class nobody comes any more. */
const opens = (now: Date) => ({
  usedAt: null,
  expiresAt: { gt: now },
  OR: [{ classId: null }, { class: { archivedAt: null } }],
});

const openInvitation = (token: string, now: Date) =>
  db().invitation.findFirst({
    where: { tokenHash: { in: hashesOf(token) }, ...opens(now) },
    select: {
      id: true,
      kind: true,
      role: true,
      expiresAt: true,
      class: { select: { id: true, name: true } },
    },
  });

/** What a token opens; null when it is unknown, used, out of date or into an archived class. */
export async function readInvitation(
  token: string,
  clock: Clock = systemClock,
): Promise<InvitationPreview | null> {
  const invitation = await openInvitation(token, clock.now());
  return (
    invitation && {
      kind: invitation.kind === 'first_teacher' ? 'first-teacher' : 'teacher',
      className: invitation.class?.name ?? null,
      role: invitation.role,
      expiresAt: invitation.expiresAt.toISOString(),
    }
  );
}

export async function hasTeachers(): Promise<boolean> {
  return (await db().teacher.count()) > 0;
}

/** For the start command: a fresh token while there is no teacher, else null. */
export async function issueFirstTeacherToken(clock: Clock = systemClock): Promise<string | null> {
  if (await hasTeachers()) return null;
  const code = classCodeFrom(randomBytes(8)) + classCodeFrom(randomBytes(8));
  const now = clock.now();
  await db().$transaction([
    db().invitation.deleteMany({ where: { kind: 'first_teacher' } }),
    db().invitation.create({
      data: {
        kind: 'first_teacher',
        tokenHash: tokenHashOf(code),
        createdAt: now,
        expiresAt: new Date(now.getTime() + invitationDays * day),
      },
    }),
  ]);
  return code.replace(/(.{4})(?=.)/g, '$1-');
}

const newTeacherSchema = z.object({
  token: z.string().max(200),
  displayName: nameSchema('Your name', 60),
  email: z
    .string()
    .trim()
    .toLowerCase()
    .pipe(z.email({ error: 'This is not an e-mail address.' }).max(254)),
  password: newPasswordSchema,
});

const invitationRefused = (kind: 'first-teacher' | 'teacher') =>
  failure(
    'invitation-refused',
    kind === 'first-teacher'
      ? 'This token is unknown, used or out of date. Ask for a new one.'
      : 'This invitation is unknown, used, taken back or out of date, or its class has been archived. Ask the colleague who sent it.',
    'token',
  );

/**
 * Uses up an invitation. A teacher who has an account already gives its password and joins the class
 * with it; the name typed is then left aside.
 */
export async function createTeacherFromInvitation(
  kind: 'first-teacher' | 'teacher',
  input: unknown,
  origin: TryOrigin,
  clock: Clock = systemClock,
): Promise<Result<{ teacherId: string }>> {
  const parsed = newTeacherSchema.safeParse(input);
  if (!parsed.success)
    return failure('bad-input', firstMessage(parsed.error), firstField(parsed.error));
  const { token, displayName, email, password } = parsed.data;
  const attempt = await beginTry({ account: `teacher ${email}`, ...origin });
  if (!attempt.allowed) {
    return failure('too-many-tries', 'That was tried too often. Wait ten minutes, then try again.');
  }
  const now = clock.now();
  const invitation = await openInvitation(token, now);
  if (invitation === null || (invitation.kind === 'first_teacher') !== (kind === 'first-teacher')) {
    await attempt.failed();
    return invitationRefused(kind);
  }
  const account = await db().teacher.findUnique({
    where: { email },
    select: { id: true, passwordHash: true },
  });
  if (account !== null && !(await secretMatches(account.passwordHash, password))) {
    await attempt.failed();
    return failure(
      'sign-in-refused',
      'This address has an account here: give its password.',
      'password',
    );
  }
  const passwordHash = account?.passwordHash ?? (await hashSecret(password));
  try {
    const teacherId = await db().$transaction(async (transaction) => {
      // Used up first: of two that come together, one finds nothing left, and so does whoever is overtaken by
      // the archiving of the class.
      const { count } = await transaction.invitation.updateMany({
        where: { id: invitation.id, ...opens(now) },
        data: { usedAt: now },
      });
      if (count === 0) return null;
      const teacher =
        account ??
        (await transaction.teacher.create({
          data: { email, displayName, passwordHash, createdAt: now },
          select: { id: true },
        }));
      if (invitation.class !== null && invitation.role !== null) {
        const key = { classId: invitation.class.id, teacherId: teacher.id };
        // Whoever is in the class already keeps the role: an invitation never takes one away.
        await transaction.classMember.upsert({
          where: { classId_teacherId: key },
          create: { ...key, role: invitation.role },
          update: {},
        });
      }
      return teacher.id;
    });
    if (teacherId === null) return invitationRefused(kind);
    await attempt.succeeded();
    await logSecurityEvent('teacher-created', teacherId, clock);
    return success({ teacherId });
  } catch (error) {
    if (isUniqueViolation(error)) return failure('try-again', 'That did not work. Try again.');
    throw error;
  }
}
