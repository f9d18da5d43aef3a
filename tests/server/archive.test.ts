import { beforeEach, describe, expect, test } from 'vitest';
import type { Viewer } from '@/lib/auth/policy';
import { archiveClass, takeBackClass } from '@/lib/data/archive';
import {
  deleteClass,
  getClass,
  listClasses,
  renameClass,
  setRetentionDate,
} from '@/lib/data/classes';
import { checkCoverToken, createCoverLink } from '@/lib/data/cover';
import { db } from '@/lib/data/db';
import { exportGradebookCsv, getGradebook } from '@/lib/data/gradebook';
import { getGroups, saveGroups } from '@/lib/data/groups';
import { inviteTeacher } from '@/lib/data/invitations';
import { changeRole, handOverClass, listMembers, removeMember } from '@/lib/data/members';
import { addStudents, exportStudent, issueCards, listRoster } from '@/lib/data/roster';
import { openSession, viewerOfToken } from '@/lib/data/sessions';
import { checkCard } from '@/lib/data/sign-in';
import { letStudentIn } from '@/lib/data/student-unlock';
import { coverOf } from '../support/cover';
import { useSchoolDatabase } from '../support/school-database';
import {
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
beforeEach(async () => {
  school = await makeSchool();
});

const nowhere = { device: null, address: null };
const browser = { device: 'Firefox on Linux', previousToken: null };
const archive = async () => valueOf(await archiveClass(school.owner, school.classId, monday));
const takeBack = async () => valueOf(await takeBackClass(school.owner, school.classId, monday));

test('only the owner archives and takes back', async () => {
  const { viewer: cover } = await coverOf(school.owner, school.classId);
  const { colleague, observer, stranger, ann, dee, anonymous } = school;
  const others: Viewer[] = [colleague, observer, stranger, ann, dee, cover, anonymous];
  for (const viewer of others) {
    expect(codeOf(await archiveClass(viewer, school.classId, monday))).toBe('not-found');
  }
  await archive();
  for (const viewer of others) {
    expect(codeOf(await takeBackClass(viewer, school.classId, monday))).toBe('not-found');
  }
  await takeBack();
  await takeBack();
  expect((await getClass(school.owner, school.classId))?.archivedAt).toBeNull();
});

test('lists and details say since when', async () => {
  await archive();
  const archivedAt = monday.now().toISOString();
  expect(await listClasses(school.observer)).toMatchObject([{ archivedAt }]);
  expect(await getClass(school.owner, school.classId)).toMatchObject({ archivedAt });
});

describe('an archived class', () => {
  test('is read and taken out as before', async () => {
    await published(school);
    await archive();
    for (const viewer of [school.owner, school.colleague, school.observer]) {
      expect(await getGradebook(viewer, school.classId, monday)).not.toBeNull();
      expect(await listRoster(viewer, school.classId)).toHaveLength(3);
      expect(await getGroups(viewer, school.classId)).not.toBeNull();
    }
    for (const viewer of [school.owner, school.colleague]) {
      expect(await exportGradebookCsv(viewer, school.classId, monday)).not.toBeNull();
      expect(await exportStudent(viewer, school.ann.studentId)).not.toBeNull();
      expect(await listMembers(viewer, school.classId)).toHaveLength(3);
    }
  });

  test('changes in nothing, whoever asks', async () => {
    const { version } = (await getGroups(school.owner, school.classId)) ?? { version: '' };
    await archive();
    const { owner, colleague, observer, classId } = school;
    const up = { teacherId: observer.teacherId, from: 'observer', to: 'teacher' } as const;
    for (const viewer of [owner, colleague]) {
      const codes = [
        await renameClass(viewer, classId, 'Year 9', monday),
        await setRetentionDate(viewer, classId, '2099-01-01', monday),
        await addStudents(viewer, classId, ['Eve']),
        await issueCards(viewer, classId, 'all', monday),
        await letStudentIn(viewer, school.ann.studentId, monday),
        await createCoverLink(viewer, classId, monday),
        await saveGroups(viewer, classId, { version, groups: [] }, monday),
        await inviteTeacher(viewer, { classId, role: 'teacher' }, monday),
        await changeRole(viewer, classId, up, monday),
        await removeMember(viewer, classId, colleague.teacherId, monday),
        await handOverClass(viewer, classId, colleague.teacherId, monday),
        await archiveClass(viewer, classId, monday),
      ].map(codeOf);
      expect(new Set(codes)).toEqual(new Set(['not-found']));
    }
  });

  test('gives its students nothing to take', async () => {
    const assignmentId = await published(school);
    expect(codeOf(await startPart(school.ann, assignmentId))).toBe('ok');
    await archive();
    expect(codeOf(await startPart(school.ben, assignmentId))).toBe('not-found');
    expect(codeOf(await startPart(school.ann, assignmentId))).toBe('not-found');
  });

  test('is deleted by its owner', async () => {
    await archive();
    expect(codeOf(await deleteClass(school.colleague, school.classId))).toBe('not-found');
    valueOf(await deleteClass(school.owner, school.classId));
    expect(await getClass(school.owner, school.classId)).toBeNull();
  });
});

describe('its students', () => {
  test('cannot sign in, and read what a wrong card reads', async () => {
    const [card] = valueOf(
      await issueCards(school.owner, school.classId, [school.ann.studentId], monday),
    );
    if (card === undefined) throw new Error('one card was made');
    expect(codeOf(await checkCard(card, nowhere, monday))).toBe('ok');
    await archive();
    const wrong = await checkCard({ ...card, words: 'able acorn amber' }, nowhere, monday);
    expect(await checkCard(card, nowhere, monday)).toEqual(wrong);
    await takeBack();
    expect(codeOf(await checkCard(card, nowhere, monday))).toBe('ok');
  });

  test('who have left the class cannot either', async () => {
    const [card] = valueOf(
      await issueCards(school.owner, school.classId, [school.ann.studentId], monday),
    );
    const session = await openSession({ studentId: school.ann.studentId }, browser, monday);
    await db().student.update({
      where: { id: school.ann.studentId },
      data: { leftAt: monday.now() },
    });
    expect(codeOf(await checkCard(card, nowhere, monday))).toBe('sign-in-refused');
    expect((await viewerOfToken(session, monday)).kind).toBe('anonymous');
  });

  test('are out at once, and stay out when the class is taken back', async () => {
    const { viewer, token } = await coverOf(school.owner, school.classId);
    const sessions = [
      await openSession({ studentId: school.ann.studentId }, browser, monday),
      await openSession({ coverId: viewer.coverId }, browser, monday),
    ];
    const kinds = () =>
      Promise.all(sessions.map(async (session) => (await viewerOfToken(session, monday)).kind));
    expect(await kinds()).toEqual(['student', 'cover']);
    await archive();
    expect(await kinds()).toEqual(['anonymous', 'anonymous']);
    expect(codeOf(await checkCoverToken(token, nowhere, monday))).toBe('cover-refused');
    await takeBack();
    expect(await kinds()).toEqual(['anonymous', 'anonymous']);
    expect(codeOf(await checkCoverToken(token, nowhere, monday))).toBe('cover-refused');
  });

  test('of other classes notice nothing', async () => {
    const session = await openSession({ studentId: school.dee.studentId }, browser, monday);
    const teacher = await openSession({ teacherId: school.owner.teacherId }, browser, monday);
    await archive();
    expect((await viewerOfToken(session, monday)).kind).toBe('student');
    expect((await viewerOfToken(teacher, monday)).kind).toBe('teacher');
  });
});

test('the audit tells of both', async () => {
  await archive();
  await takeBack();
  const rows = await db().audit.findMany({
    where: { classId: school.classId, action: { in: ['class-archived', 'class-taken-back'] } },
    select: { action: true, teacherId: true },
  });
  expect(rows).toEqual([
    { action: 'class-archived', teacherId: school.owner.teacherId },
    { action: 'class-taken-back', teacherId: school.owner.teacherId },
  ]);
});
