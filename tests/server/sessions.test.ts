import { beforeAll, describe, expect, test } from 'vitest';
import { submitAttempt } from '@/lib/data/attempts';
import { setIdleSignOut } from '@/lib/data/classes';
import { db } from '@/lib/data/db';
import { issueCards, listRoster, removeStudent } from '@/lib/data/roster';
import {
  endSessionById,
  endSessionOf,
  listSessionsOf,
  openSession,
  viewerOfToken,
} from '@/lib/data/sessions';
import { useSchoolDatabase } from '../support/school-database';
import {
  answerFor,
  at,
  codeOf,
  makeSchool,
  monday,
  published,
  startPart,
  valueOf,
  type School,
} from '../support/school';

useSchoolDatabase();
let school: School;
beforeAll(async () => {
  school = await makeSchool();
});

const start = monday.now().getTime();
const minutesOn = (minutes: number) => at(new Date(start + minutes * 60_000).toISOString());
const open = (
  subject: Parameters<typeof openSession>[0],
  previousToken: string | null = null,
  clock = monday,
) => openSession(subject, { device: 'Firefox on Linux', previousToken }, clock);
const kindOf = async (token: string, minutes: number) =>
  (await viewerOfToken(token, minutesOn(minutes))).kind;

test('a token says who is asking; any other says nobody', async () => {
  expect(await viewerOfToken(await open({ studentId: school.ann.studentId }), monday)).toEqual(
    school.ann,
  );
  expect(await viewerOfToken(await open({ teacherId: school.owner.teacherId }), monday)).toEqual(
    school.owner,
  );
  expect(await viewerOfToken('guess', monday)).toEqual({ kind: 'anonymous' });
  expect(await viewerOfToken('', monday)).toEqual({ kind: 'anonymous' });
});

test('the database holds only a hash of the token', async () => {
  const token = await open({ studentId: school.ann.studentId });
  expect(Buffer.from(token, 'base64url')).toHaveLength(32);
  const sessions = await db().session.findMany();
  expect(JSON.stringify(sessions)).not.toContain(token);
});

describe('idle time', () => {
  test('a student: four hours, counted from the last sign of life', async () => {
    const token = await open({ studentId: school.ann.studentId });
    expect(await kindOf(token, 239)).toBe('student');
    expect(await kindOf(token, 239 + 239)).toBe('student');
    expect(await kindOf(token, 239 + 239 + 240)).toBe('anonymous');
  });

  test('a student at a shared computer: twenty minutes, at once for sessions that are open', async () => {
    const token = await open({ studentId: school.ann.studentId });
    valueOf(await setIdleSignOut(school.owner, school.classId, 20));
    expect(await kindOf(token, 19)).toBe('student');
    expect(await kindOf(token, 39)).toBe('anonymous');
    valueOf(await setIdleSignOut(school.owner, school.classId, null));
    expect(codeOf(await setIdleSignOut(school.owner, school.classId, 1))).toBe('bad-input');
  });

  test('a teacher: twelve hours', async () => {
    const token = await open({ teacherId: school.owner.teacherId });
    expect(await kindOf(token, 719)).toBe('teacher');
    expect(await kindOf(token, 719 + 720)).toBe('anonymous');
  });

  test('however busy, a student signs in again after a day', async () => {
    const token = await open({ studentId: school.ann.studentId });
    for (let minutes = 200; minutes < 1440; minutes += 200) {
      expect(await kindOf(token, minutes)).toBe('student');
    }
    expect(await kindOf(token, 1440)).toBe('anonymous');
  });
});

describe('ending', () => {
  test('signing in again in the same browser ends the session before', async () => {
    const before = await open({ studentId: school.ann.studentId });
    const after = await open({ studentId: school.ben.studentId }, before);
    expect(after).not.toBe(before);
    expect(await kindOf(before, 1)).toBe('anonymous');
    expect(await kindOf(after, 1)).toBe('student');
  });

  test('signing out', async () => {
    const token = await open({ studentId: school.ann.studentId });
    await endSessionOf(token, monday);
    expect(await kindOf(token, 1)).toBe('anonymous');
  });

  test('a new card ends every session of the old one, and of nobody else', async () => {
    const [ann, ben] = [
      await open({ studentId: school.ann.studentId }),
      await open({ studentId: school.ben.studentId }),
    ];
    valueOf(await issueCards(school.owner, school.classId, [school.ann.studentId]));
    expect(await kindOf(ann, 1)).toBe('anonymous');
    expect(await kindOf(ben, 1)).toBe('student');
  });

  test('a student who is taken off the roster is signed out', async () => {
    const token = await open({ studentId: school.cy.studentId });
    valueOf(await removeStudent(school.owner, school.cy.studentId));
    expect(await kindOf(token, 1)).toBe('anonymous');
  });
});

describe("one's own sessions", () => {
  test('are listed, the current one marked, the expired ones left out', async () => {
    const { stranger } = school;
    const old = await open({ teacherId: stranger.teacherId });
    const current = await open({ teacherId: stranger.teacherId }, null, minutesOn(600));
    const listed = await listSessionsOf(stranger, current, minutesOn(610));
    expect(listed.map((session) => session.current)).toEqual([true, false]);
    expect(listed[0]).toMatchObject({ device: 'Firefox on Linux' });
    expect(await listSessionsOf(stranger, current, minutesOn(721))).toHaveLength(1);
    expect(await listSessionsOf(school.anonymous, old, monday)).toEqual([]);
  });

  test('can be ended by their owner alone', async () => {
    const { observer } = school;
    const token = await open({ teacherId: observer.teacherId });
    const [session] = await listSessionsOf(observer, token, monday);
    if (session === undefined) throw new Error('the session is listed');
    for (const viewer of [school.owner, school.ann, school.anonymous]) {
      expect(codeOf(await endSessionById(viewer, session.id, monday))).toBe('not-found');
    }
    for (const notId of [{ not: 'x' }, { in: [session.id] }, [session.id], '']) {
      expect(codeOf(await endSessionById(observer, notId, monday))).toBe('not-found');
    }
    expect(await kindOf(token, 1)).toBe('teacher');
    valueOf(await endSessionById(observer, session.id, monday));
    expect(await kindOf(token, 1)).toBe('anonymous');
    expect(codeOf(await endSessionById(observer, session.id, monday))).toBe('not-found');
  });
});

test('the roster says when a student was last there', async () => {
  await open({ studentId: school.ben.studentId }, null, minutesOn(5000));
  const roster = await listRoster(school.owner, school.classId);
  const ben = roster?.find(({ studentId }) => studentId === school.ben.studentId);
  expect(ben).toMatchObject({ lastSeenAt: minutesOn(5000).now().toISOString(), hasCard: false });
});

test('whose sign-ins are forgotten was last there for the last work', async () => {
  const seenAt = async () =>
    (await listRoster(school.owner, school.classId))?.find(
      ({ studentId }) => studentId === school.ann.studentId,
    )?.lastSeenAt;
  await db().session.deleteMany({ where: { studentId: school.ann.studentId } });
  expect(await seenAt()).toBeNull();
  const assignmentId = await published(school);
  const { attemptId } = valueOf(await startPart(school.ann, assignmentId, minutesOn(60)));
  expect(await seenAt()).toBe(minutesOn(60).now().toISOString());
  const submission = await answerFor(attemptId, 'best');
  valueOf(
    await submitAttempt(
      school.ann,
      attemptId,
      { submission, idempotencyKey: `key-${attemptId}` },
      minutesOn(75),
    ),
  );
  expect(await seenAt()).toBe(minutesOn(75).now().toISOString());
  // Somebody else's work is nobody else's visit.
  await open({ studentId: school.ann.studentId }, null, minutesOn(10));
  expect(await seenAt()).toBe(minutesOn(75).now().toISOString());
});
