import { beforeAll, expect, test } from 'vitest';
import { db } from '@/lib/data/db';
import { findExpired, purge } from '@/lib/data/purge';
import { useSchoolDatabase } from '../support/school-database';

useSchoolDatabase();
const now = new Date('2027-10-01T12:00:00Z');
const at = (text: string) => new Date(text);

async function makeClass(name: string, retentionDate: Date) {
  const made = await db().class.create({
    data: {
      name,
      code: name.toUpperCase().padEnd(8, 'X'),
      timeZone: 'Europe/London',
      retentionDate,
      createdAt: at('2026-09-01T00:00:00Z'),
    },
  });
  const student = await db().student.create({
    data: { classId: made.id, cardNumber: 1, displayName: 'Kestrel' },
  });
  await db().askedQuestion.create({
    data: {
      studentId: student.id,
      lesson: 'level-enough',
      number: 1,
      skill: 'level',
      seed: name,
      family: 'any',
      template: 'any',
      generatorVersion: 1,
      graderVersion: 1,
      item: {},
      askedAt: at('2026-10-01T00:00:00Z'),
    },
  });
  return { classId: made.id, studentId: student.id };
}

const makeSession = (studentId: string, tokenHash: string, lastSeenAt: Date, endedAt?: Date) =>
  db().session.create({
    data: {
      tokenHash,
      studentId,
      device: 'test',
      createdAt: at('2027-09-30T00:00:00Z'),
      lastSeenAt,
      endedAt: endedAt ?? null,
    },
  });

beforeAll(async () => {
  const past = await makeClass('past', at('2027-10-01T11:59:59Z'));
  const { studentId, classId } = await makeClass('current', at('2027-10-01T12:00:01Z'));
  await makeSession(studentId, 'in use', at('2027-10-01T00:00:01Z'));
  await makeSession(studentId, 'idle for over twelve hours', at('2027-09-30T23:59:59Z'));
  await makeSession(
    studentId,
    'signed out',
    at('2027-10-01T11:00:00Z'),
    at('2027-10-01T11:00:00Z'),
  );
  const link = (tokenHash: string, expiresAt: Date, endedAt: Date | null = null) => ({
    classId,
    tokenHash,
    expiresAt,
    endedAt,
    createdAt: at('2027-09-30T07:00:00Z'),
  });
  await db().coverLink.createMany({
    data: [
      link('good until tonight', at('2027-10-01T20:00:00Z')),
      link('of yesterday', at('2027-09-30T20:00:00Z')),
      link('ended', at('2027-10-01T20:00:00Z'), at('2027-10-01T09:00:00Z')),
    ],
  });
  const monthOld = at('2027-09-01T12:00:00Z');
  const justOlder = at('2027-09-01T11:59:59Z');
  await db().securityEvent.createMany({
    data: [
      { kind: 'kept: of a student', subject: studentId, at: monthOld },
      { kind: 'kept: of a class', subject: classId, at: now },
      { kind: 'kept: of nobody', subject: null, at: monthOld },
      { kind: 'old, of a student', subject: studentId, at: justOlder },
      { kind: 'old, of nobody', subject: null, at: justOlder },
      { kind: 'of a student who is gone', subject: 'a student of long ago', at: now },
      { kind: 'of a student of the class that goes', subject: past.studentId, at: now },
      { kind: 'of the class that goes', subject: past.classId, at: now },
    ],
  });
});

test('what would be deleted is told, and nothing is deleted by telling', async () => {
  const expected = {
    classes: [{ name: 'past', students: 1, retentionDate: '2027-10-01T11:59:59.000Z' }],
    sessions: 2,
    invitations: 0,
    coverLinks: 2,
    securityEvents: 5,
  };
  expect(await findExpired(now)).toEqual(expected);
  expect(await findExpired(now)).toEqual(expected);
});

test('a class past its date goes with its students; the other and its open session stay', async () => {
  await purge(now);
  const classes = await db().class.findMany({ select: { name: true } });
  const students = await db().student.findMany({ select: { class: { select: { name: true } } } });
  const sessions = await db().session.findMany({ select: { tokenHash: true } });
  expect(classes).toEqual([{ name: 'current' }]);
  expect(students).toEqual([{ class: { name: 'current' } }]);
  expect(sessions).toEqual([{ tokenHash: 'in use' }]);
  expect(await db().coverLink.findMany({ select: { tokenHash: true } })).toEqual([
    { tokenHash: 'good until tonight' },
  ]);
  expect(await db().askedQuestion.findMany({ select: { seed: true } })).toEqual([
    { seed: 'current' },
  ]);
});

test('the security log keeps a month of those who are still there', async () => {
  const events = await db().securityEvent.findMany({ orderBy: { kind: 'asc' } });
  expect(events.map(({ kind }) => kind)).toEqual([
    'kept: of a class',
    'kept: of a student',
    'kept: of nobody',
  ]);
});
