import { beforeAll, describe, expect, test } from 'vitest';
import type { Viewer } from '@/lib/auth/policy';
import { previewAnswerKey } from '@/lib/data/assignments';
import { getAttemptKey } from '@/lib/data/attempt-key';
import { getClass, listClasses } from '@/lib/data/classes';
import { getAttemptComments, writeComment } from '@/lib/data/comments';
import { checkCoverToken, createCoverLink, endCoverLink, listCoverLinks } from '@/lib/data/cover';
import { db } from '@/lib/data/db';
import { exportGradebookCsv, getGradebook } from '@/lib/data/gradebook';
import { exportStudent, issueCards, listRoster } from '@/lib/data/roster';
import { openSession, viewerOfToken } from '@/lib/data/sessions';
import { checkCard } from '@/lib/data/sign-in';
import { getSignOffSheet } from '@/lib/data/sign-off-sheet';
import { getSkillRecord } from '@/lib/data/skill-progress';
import { getStudentReport } from '@/lib/data/student-report';
import { letStudentIn, listToLetIn } from '@/lib/data/student-unlock';
import { coverOf } from '../support/cover';
import { handedIn } from '../support/marked-work';
import { useSchoolDatabase } from '../support/school-database';
import { at, codeOf, makeSchool, monday, published, valueOf, type School } from '../support/school';

useSchoolDatabase();

let school: School;
beforeAll(async () => {
  school = await makeSchool();
});

const nowhere = { device: null, address: null };
const browser = { device: 'Firefox on Linux', previousToken: null };
const later = (clock: typeof monday, minutes: number) =>
  at(new Date(clock.now().getTime() + minutes * 60_000).toISOString());
const everybodyElse = (): Viewer[] => [
  school.observer,
  school.stranger,
  school.ann,
  school.dee,
  school.anonymous,
];

describe('how long a link is good', () => {
  // Wall clocks reckoned by hand: London keeps UTC in November and UTC+1 in June.
  test.each([
    ['in the morning', '2026-11-30T09:00:00Z', '2026-12-01T00:00:00.000Z'],
    ['a minute before midnight', '2026-11-30T23:59:00Z', '2026-12-01T00:00:00.000Z'],
    ['in summer', '2027-06-14T08:00:00Z', '2027-06-14T23:00:00.000Z'],
    // 25 October 2026 has 25 hours there, which is one more than a link may have.
    ['on the day the clocks go back', '2026-10-24T23:10:00Z', '2026-10-25T23:10:00.000Z'],
  ])('until the end of the day on the class’s clock: %s', async (_, now, end) => {
    const other = await makeSchool();
    const { expiresAt } = valueOf(await createCoverLink(other.owner, other.classId, at(now)));
    expect(expiresAt).toBe(end);
  });

  test('no longer, and a session opened with it neither', async () => {
    const evening = at('2026-11-30T23:00:00Z');
    const { token, viewer } = await coverOf(school.owner, school.classId, evening);
    const session = await openSession({ coverId: viewer.coverId }, browser, evening);
    expect(await viewerOfToken(session, later(evening, 59))).toEqual(viewer);
    expect(await viewerOfToken(session, later(evening, 60))).toEqual({ kind: 'anonymous' });
    expect(codeOf(await checkCoverToken(token, nowhere, later(evening, 60)))).toBe('cover-refused');
  });

  test('and four hours of nothing end the session, not the link', async () => {
    const { token, viewer } = await coverOf(school.owner, school.classId);
    const session = await openSession({ coverId: viewer.coverId }, browser, monday);
    expect((await viewerOfToken(session, later(monday, 239))).kind).toBe('cover');
    expect((await viewerOfToken(session, later(monday, 239 + 240))).kind).toBe('anonymous');
    expect(codeOf(await checkCoverToken(token, nowhere, later(monday, 479)))).toBe('ok');
    valueOf(await endCoverLink(school.owner, viewer.coverId, monday));
  });
});

test('the database holds only a hash of the token', async () => {
  const { token } = await coverOf(school.colleague, school.classId);
  expect(Buffer.from(token, 'base64url')).toHaveLength(32);
  expect(JSON.stringify(await db().coverLink.findMany())).not.toContain(token);
});

test('ending a link puts out whoever came in by it, at once', async () => {
  const { token, viewer } = await coverOf(school.owner, school.classId);
  const session = await openSession({ coverId: viewer.coverId }, browser, monday);
  for (const other of everybodyElse()) {
    expect(codeOf(await endCoverLink(other, viewer.coverId, monday))).toBe('not-found');
  }
  expect((await viewerOfToken(session, monday)).kind).toBe('cover');
  valueOf(await endCoverLink(school.colleague, viewer.coverId, monday));
  valueOf(await endCoverLink(school.colleague, viewer.coverId, monday));
  expect((await viewerOfToken(session, monday)).kind).toBe('anonymous');
  expect(codeOf(await checkCoverToken(token, nowhere, monday))).toBe('cover-refused');
});

test('the list says who made each, whether it was opened, and what became of it', async () => {
  const other = await makeSchool();
  const { viewer } = await coverOf(other.colleague, other.classId);
  await openSession({ coverId: viewer.coverId }, browser, monday);
  const morning = later(monday, 5);
  expect(await listCoverLinks(other.owner, other.classId, morning)).toEqual([
    {
      coverId: viewer.coverId,
      madeBy: 'colleague',
      madeAt: monday.now().toISOString(),
      expiresAt: '2026-12-01T00:00:00.000Z',
      endedAt: null,
      open: true,
      timesOpened: 1,
    },
  ]);
  const [next] = (await listCoverLinks(other.owner, other.classId, later(monday, 24 * 60))) ?? [];
  expect(next).toMatchObject({ open: false, endedAt: null });
  expect(await listCoverLinks(other.owner, other.classId, later(monday, 15 * 24 * 60))).toEqual([]);
});

test('only so many are open at once', async () => {
  const other = await makeSchool();
  for (let count = 0; count < 5; count += 1) {
    valueOf(await createCoverLink(other.owner, other.classId, monday));
  }
  expect(codeOf(await createCoverLink(other.owner, other.classId, monday))).toBe('too-many');
  expect(codeOf(await createCoverLink(other.owner, other.classId, later(monday, 16 * 60)))).toBe(
    'ok',
  );
});

test('a wrong token is counted like a failed sign-in', async () => {
  const origin = { device: 'a device that guesses', address: null };
  for (let guess = 0; guess < 10; guess += 1) {
    expect(codeOf(await checkCoverToken(`guess ${guess}`, origin, monday))).toBe('cover-refused');
  }
  expect(codeOf(await checkCoverToken('one more', origin, monday))).toBe('too-many-tries');
  const card = { classCode: 'HLNBANK2', cardNumber: 1, words: 'maple comet otter' };
  expect(codeOf(await checkCard(card, origin, monday))).toBe('too-many-tries');
});

describe('a substitute', () => {
  test('sees the one class and no other', async () => {
    const { viewer } = await coverOf(school.owner, school.classId);
    expect(await getClass(viewer, school.classId)).toMatchObject({ role: 'cover' });
    expect(await getGradebook(viewer, school.classId, monday)).not.toBeNull();
    expect(await getClass(viewer, school.otherClassId)).toBeNull();
    expect(await getGradebook(viewer, school.otherClassId, monday)).toBeNull();
    expect(await listClasses(viewer)).toEqual([]);
  });

  test('sees no accommodation and takes no file away', async () => {
    const { viewer } = await coverOf(school.owner, school.classId);
    await db().accommodation.create({
      data: { studentId: school.cy.studentId, extraAttempts: 3, extraTime: '2' },
    });
    const seen = await listRoster(viewer, school.classId);
    const told = await listRoster(school.owner, school.classId);
    const ofCy = (rows: typeof seen) =>
      rows?.find(({ studentId }) => studentId === school.cy.studentId);
    expect(ofCy(told)).toMatchObject({ extraAttempts: 3, extraTime: '2' });
    expect(ofCy(seen)).toMatchObject({ extraAttempts: 0, extraTime: 'none' });
    expect(await exportStudent(viewer, school.cy.studentId)).toBeNull();
    expect(await exportGradebookCsv(viewer, school.classId)).toBeNull();
  });

  test('reads no note and no comment, opens no answer key and no page for a family', async () => {
    const other = await makeSchool();
    const { viewer } = await coverOf(other.owner, other.classId);
    const { studentId } = other.ann;
    const assignmentId = await published(other);
    const attemptId = await handedIn(other.ann, assignmentId);
    const text = 'a word for Ann';
    valueOf(await writeComment(other.owner, { attemptId, criterion: '', text }, monday));
    const observedAt = monday.now();
    await db().observation.create({
      data: {
        studentId,
        skill: 'level',
        level: 3,
        gates: [],
        instrument: 'wren',
        prompts: 0,
        note: 'a word for teachers',
        key: `seen-${studentId}`,
        observedAt,
        conditions: { light: 'night', cloud: 'clear' },
        receivedAt: observedAt,
        assessorId: other.owner.teacherId,
      },
    });
    const read = async (who: Viewer) => ({
      comments: (await getAttemptComments(who, attemptId, monday))?.comments.map((c) => c.text),
      sheet: (await getSignOffSheet(who, other.classId, monday))?.notes.map(({ note }) => note),
      record: (await getSkillRecord(who, studentId, 'level', monday))?.observations.map(
        ({ note }) => note,
      ),
      key: (await getAttemptKey(who, attemptId)) !== null,
      preview: (await previewAnswerKey(who, assignmentId)) !== null,
      report: (await getStudentReport(who, studentId, monday)) !== null,
    });
    expect(await read(other.observer)).toEqual({
      comments: [text],
      sheet: ['a word for teachers'],
      record: ['a word for teachers'],
      key: true,
      preview: true,
      report: true,
    });
    expect(await read(viewer)).toEqual({
      comments: [],
      sheet: [''],
      record: [''],
      key: false,
      preview: false,
      report: false,
    });
  });

  test('lets one student in: new words work, the old ones and their session do not', async () => {
    const { viewer } = await coverOf(school.owner, school.classId);
    const [old] = valueOf(
      await issueCards(school.owner, school.classId, [school.ben.studentId], monday),
    );
    const session = await openSession({ studentId: school.ben.studentId }, browser, monday);
    const card = valueOf(await letStudentIn(viewer, school.ben.studentId, monday));
    expect(card).toMatchObject({ displayName: 'Ben', cardNumber: 2, classCode: old?.classCode });
    expect((await viewerOfToken(session, monday)).kind).toBe('anonymous');
    const typed = { classCode: card.classCode, cardNumber: card.cardNumber };
    const signIn = async (words: string) =>
      codeOf(await checkCard({ ...typed, words }, nowhere, monday));
    expect(await signIn(card.words)).toBe('ok');
    expect(await signIn(old?.words ?? '')).toBe('sign-in-refused');
  });

  test('is named in the audit by the link, a teacher by the account', async () => {
    const other = await makeSchool();
    const { viewer } = await coverOf(other.owner, other.classId);
    const auditOf = (studentId: string) =>
      db().audit.findMany({
        where: { action: 'student-let-in', subject: `student ${studentId}` },
        select: { teacherId: true, after: true },
      });
    valueOf(await letStudentIn(viewer, other.ben.studentId, monday));
    expect(await auditOf(other.ben.studentId)).toEqual([
      { teacherId: null, after: { coverLink: viewer.coverId } },
    ]);
    valueOf(await letStudentIn(other.colleague, other.ann.studentId, monday));
    expect(await auditOf(other.ann.studentId)).toEqual([
      { teacherId: other.colleague.teacherId, after: null },
    ]);
  });

  test('lets nobody in who has left', async () => {
    const other = await makeSchool();
    const { viewer } = await coverOf(other.owner, other.classId);
    await db().student.update({
      where: { id: other.cy.studentId },
      data: { leftAt: monday.now() },
    });
    expect(codeOf(await letStudentIn(viewer, other.cy.studentId, monday))).toBe('not-found');
    expect((await listToLetIn(viewer, other.classId))?.map((row) => row.displayName)).toEqual([
      'Ann',
      'Ben',
    ]);
  });
});
