import 'server-only';
import { z } from 'zod';
import { normaliseCardWords, normaliseClassCode } from '../auth/class-code';
import { secretMatches } from '../auth/passwords';
import { beginTry } from '../auth/throttle';
import { systemClock, type Clock } from './clock';
import { db } from './db';
import { env } from './env';
import { failure, success, type Result } from './result';
import { logSecurityEvent } from './security-log';

/** Where a try comes from: a random cookie of the browser and, where it can be known, the address. */
export type TryOrigin = { device: string | null; address: string | null };

const tooManyTries = () =>
  failure('too-many-tries', 'That was tried too often. Wait ten minutes, then try again.');
/** The same whichever part was wrong, so that a guess learns nothing. */
const cardRefused = () =>
  failure(
    'sign-in-refused',
    'Class code, card number and words do not go together. Check each on the card.',
  );
const passwordRefused = () =>
  failure('sign-in-refused', 'E-mail address and password do not go together.');

const cardSchema = z.object({
  classCode: z.string().max(40).transform(normaliseClassCode),
  cardNumber: z.coerce.number().int().min(1).max(100_000),
  words: z.string().max(120).transform(normaliseCardWords),
});
const passwordSchema = z.object({
  email: z.string().trim().toLowerCase().max(254),
  password: z.string().max(512),
});

/** One hash check, also for a card that does not exist. */
export async function checkCard(
  input: unknown,
  origin: TryOrigin,
  clock: Clock = systemClock,
): Promise<Result<{ studentId: string }>> {
  const parsed = cardSchema.safeParse(input);
  const card = parsed.success ? parsed.data : { classCode: '', cardNumber: 0, words: '' };
  const attempt = await beginTry({
    account: `card ${card.classCode} ${card.cardNumber}`,
    ...origin,
  });
  if (!attempt.allowed) {
    await logSecurityEvent('sign-in-throttled', null, clock);
    return tooManyTries();
  }
  const student = await db().student.findFirst({
    where: { cardNumber: card.cardNumber, class: { code: card.classCode } },
    select: {
      id: true,
      secretHash: true,
      leftAt: true,
      class: { select: { isDemo: true, archivedAt: true } },
    },
  });
  const matches = await secretMatches(student?.secretHash ?? null, card.words);
  // No account of the demonstration opens anything where a real class is served.
  const misplaced = env().mode === 'school' && student?.class.isDemo === true;
  const gone = student !== null && (student.leftAt !== null || student.class.archivedAt !== null);
  if (student === null || !matches || misplaced || gone) {
    await attempt.failed();
    await logSecurityEvent('sign-in-failed', student?.id ?? null, clock);
    return cardRefused();
  }
  await attempt.succeeded();
  await logSecurityEvent('signed-in', student.id, clock);
  return success({ studentId: student.id });
}

export async function checkPassword(
  input: unknown,
  origin: TryOrigin,
  clock: Clock = systemClock,
): Promise<Result<{ teacherId: string }>> {
  const parsed = passwordSchema.safeParse(input);
  const typed = parsed.success ? parsed.data : { email: '', password: '' };
  const attempt = await beginTry({ account: `teacher ${typed.email}`, ...origin });
  if (!attempt.allowed) {
    await logSecurityEvent('sign-in-throttled', null, clock);
    return tooManyTries();
  }
  const teacher = await db().teacher.findUnique({
    where: { email: typed.email },
    select: { id: true, passwordHash: true, isDemo: true },
  });
  const matches = await secretMatches(teacher?.passwordHash ?? null, typed.password);
  const misplaced = env().mode === 'school' && teacher?.isDemo === true;
  if (teacher === null || !matches || misplaced) {
    await attempt.failed();
    await logSecurityEvent('sign-in-failed', teacher?.id ?? null, clock);
    return passwordRefused();
  }
  await attempt.succeeded();
  await logSecurityEvent('signed-in', teacher.id, clock);
  return success({ teacherId: teacher.id });
}
