import 'server-only';
import { cookies, headers } from 'next/headers';
import { cache } from 'react';
import { systemClock } from '../data/clock';
import { checkCoverToken } from '../data/cover';
import { env } from '../data/env';
import { createTeacherFromInvitation, type NewTeacher } from '../data/invitations';
import { changePasswordOf } from '../data/passwords';
import type { Result } from '../data/result';
import {
  endSessionById,
  endSessionOf,
  listSessionsOf,
  openSession,
  viewerOfToken,
  type SessionSubject,
  type SessionSummary,
} from '../data/sessions';
import { checkCard, checkPassword, type TryOrigin } from '../data/sign-in';
import { newToken } from '../data/tokens';
import { clientAddress } from './client-address';
import { mayAskQuestion, mayMakeRound } from './throttle';
import { deviceName } from './device-name';
import type { Viewer } from './policy';

/** The prefix makes browsers insist on https and this host alone; it needs https to be set at all. */
const cookieName = (name: string): string =>
  env().secureCookies ? `__Host-duskbench-${name}` : `duskbench-${name}`;
const cookieOptions = () =>
  ({ httpOnly: true, sameSite: 'lax', secure: env().secureCookies, path: '/' }) as const;

async function sessionToken(): Promise<string | null> {
  return (await cookies()).get(cookieName('session'))?.value ?? null;
}

/** Who is asking; looked up once per request. */
export const getViewer = cache(async (): Promise<Viewer> => {
  const token = await sessionToken();
  return token === null ? { kind: 'anonymous' } : viewerOfToken(token);
});

/**
 * For a page that asks by itself, hour after hour: who is asking at each time of asking. It keeps no
 * session alive: a board left on a projector is signed out like any other page.
 */
export async function viewerAgainAndAgain(): Promise<() => Promise<Viewer>> {
  const token = await sessionToken();
  return () =>
    token === null
      ? Promise.resolve({ kind: 'anonymous' })
      : viewerOfToken(token, systemClock, { countsAsUse: false });
}

/**
 * The device is a random cookie that means nothing else; a browser gets it with its first try, which
 * counts as that device's already. For the address see {@link clientAddress}: in the development
 * server, which deletes no header, it is the client's word; the limits on card and device hold there.
 */
async function tryOrigin(): Promise<TryOrigin> {
  const jar = await cookies();
  const name = cookieName('device');
  const known = jar.get(name)?.value;
  const device = known ?? newToken();
  if (known === undefined) jar.set(name, device, { ...cookieOptions(), maxAge: 365 * 24 * 3600 });
  const forwardedFor = (await headers()).get('x-forwarded-for');
  return { device, address: clientAddress(forwardedFor, env().trustProxy) };
}

const ownAddress = async (): Promise<string | null> =>
  clientAddress((await headers()).get('x-forwarded-for'), env().trustProxy);

/** Whether the visitor who is asking may have one more round made or marked. */
export const visitorMayMakeRound = async (): Promise<boolean> => mayMakeRound(await ownAddress());

/** Whether the visitor who is asking may have one more question of a lesson drawn or marked. */
export const visitorMayAskQuestion = async (): Promise<boolean> =>
  mayAskQuestion(await ownAddress());

async function open(subject: SessionSubject): Promise<void> {
  const device = deviceName((await headers()).get('user-agent'));
  const token = await openSession(subject, { device, previousToken: await sessionToken() });
  // Without an age: the browser forgets it when it closes; the server counts the idle time.
  (await cookies()).set(cookieName('session'), token, cookieOptions());
}

export async function signInStudent(input: {
  classCode: string;
  cardNumber: number | string;
  words: string;
}): Promise<Result<{ studentId: string }>> {
  const checked = await checkCard(input, await tryOrigin(), systemClock);
  if (checked.ok) await open(checked.value);
  return checked;
}

export async function signInTeacher(input: {
  email: string;
  password: string;
}): Promise<Result<{ teacherId: string }>> {
  const checked = await checkPassword(input, await tryOrigin(), systemClock);
  if (checked.ok) await open(checked.value);
  return checked;
}

/** By the link that a teacher of the class made for today. Ends the sign-in that this browser had. */
export async function signInCover(token: string): Promise<Result<{ classId: string }>> {
  const checked = await checkCoverToken(token, await tryOrigin(), systemClock);
  if (!checked.ok) return checked;
  await open({ coverId: checked.value.coverId });
  return { ok: true, value: { classId: checked.value.classId } };
}

export async function signOut(): Promise<void> {
  const token = await sessionToken();
  if (token !== null) await endSessionOf(token);
  (await cookies()).set(cookieName('session'), '', { ...cookieOptions(), maxAge: 0 });
}

async function joinAsTeacher(
  kind: 'first-teacher' | 'teacher',
  input: NewTeacher,
): Promise<Result<{ teacherId: string }>> {
  const created = await createTeacherFromInvitation(kind, input, await tryOrigin());
  if (created.ok) await open(created.value);
  return created;
}

/** With the one-time token that the start command prints. Signs the new teacher in as well. */
export const createFirstTeacher = (input: NewTeacher): Promise<Result<{ teacherId: string }>> =>
  joinAsTeacher('first-teacher', input);

/** Signs the new teacher in as well. */
export const acceptInvitation = (input: NewTeacher): Promise<Result<{ teacherId: string }>> =>
  joinAsTeacher('teacher', input);

export async function listSessions(viewer: Viewer): Promise<SessionSummary[]> {
  return listSessionsOf(viewer, await sessionToken());
}

export const endSession = (viewer: Viewer, id: string): Promise<Result<null>> =>
  endSessionById(viewer, id);

/** The viewer's own; every other session of theirs ends. */
export async function changePassword(
  viewer: Viewer,
  input: { oldPassword: string; newPassword: string },
): Promise<Result<null>> {
  const context = { currentToken: await sessionToken(), origin: await tryOrigin() };
  return changePasswordOf(viewer, input, context);
}
