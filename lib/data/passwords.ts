import 'server-only';
import { z } from 'zod';
import { hashSecret, secretMatches } from '../auth/passwords';
import type { Viewer } from '../auth/policy';
import { beginTry } from '../auth/throttle';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { firstField, firstMessage, newPasswordSchema } from './names';
import { failure, notFound, success, type Result } from './result';
import { logSecurityEvent } from './security-log';
import type { TryOrigin } from './sign-in';
import { tokenHashOf } from './tokens';

const changeSchema = z.object({
  oldPassword: z.string().max(512),
  newPassword: newPasswordSchema,
});

/**
 * A teacher's own password: the old one is asked for, as at a sign-in, and every session but the one
 * with `currentToken` ends. Students have cards, which their teacher issues anew.
 */
export async function changePasswordOf(
  viewer: Viewer,
  input: unknown,
  context: { currentToken: string | null; origin: TryOrigin },
  clock: Clock = systemClock,
): Promise<Result<null>> {
  if (viewer.kind !== 'teacher') return notFound();
  const { teacherId } = viewer;
  const parsed = changeSchema.safeParse(input);
  if (!parsed.success)
    return failure('bad-input', firstMessage(parsed.error), firstField(parsed.error));
  const teacher = await db().teacher.findUnique({
    where: { id: teacherId },
    select: { email: true, passwordHash: true },
  });
  if (teacher === null) return notFound();
  const attempt = await beginTry({ account: `teacher ${teacher.email}`, ...context.origin });
  if (!attempt.allowed) {
    return failure('too-many-tries', 'That was tried too often. Wait ten minutes, then try again.');
  }
  if (!(await secretMatches(teacher.passwordHash, parsed.data.oldPassword))) {
    await attempt.failed();
    return failure('password-refused', 'This is not your password until now.', 'oldPassword');
  }
  await attempt.succeeded();
  const passwordHash = await hashSecret(parsed.data.newPassword);
  const { currentToken } = context;
  const current = currentToken === null ? {} : { NOT: { tokenHash: tokenHashOf(currentToken) } };
  await db().$transaction([
    db().teacher.update({ where: { id: teacherId }, data: { passwordHash } }),
    db().session.updateMany({
      where: { teacherId, endedAt: null, ...current },
      data: { endedAt: clock.now() },
    }),
  ]);
  await logSecurityEvent('password-changed', teacherId, clock);
  return success(null);
}
