import { beforeEach, expect, test } from 'vitest';
import { z } from 'zod';
import { createAssignment, publishAssignment } from '@/lib/data/assignments';
import { renameClass, setIdleSignOut, setRetentionDate } from '@/lib/data/classes';
import { db } from '@/lib/data/db';
import { issueCards, removeStudent, renameStudent } from '@/lib/data/roster';
import { useSchoolDatabase } from '../support/school-database';
import {
  assignmentInput,
  codeOf,
  makeSchool,
  monday,
  valueOf,
  type School,
} from '../support/school';

useSchoolDatabase();
let school: School;
beforeEach(async () => {
  school = await makeSchool();
});

const audit = () =>
  db().audit.findMany({
    where: { classId: school.classId },
    select: { teacherId: true, action: true, subject: true, before: true, after: true, at: true },
  });

test('settings of a class: who changed them, when, from what, to what', async () => {
  const { owner, colleague, classId } = school;
  valueOf(await renameClass(colleague, classId, 'Year 8b', monday));
  valueOf(await setIdleSignOut(colleague, classId, 20, monday));
  valueOf(await setRetentionDate(owner, classId, '2027-12-24', monday));
  const line = { subject: classId, at: monday.now() };
  expect(await audit()).toEqual(
    expect.arrayContaining([
      {
        ...line,
        teacherId: colleague.teacherId,
        action: 'class-renamed',
        before: { name: 'Year 8' },
        after: { name: 'Year 8b' },
      },
      {
        ...line,
        teacherId: colleague.teacherId,
        action: 'idle-sign-out',
        before: { idleSignOutMinutes: null },
        after: { idleSignOutMinutes: 20 },
      },
      {
        ...line,
        teacherId: owner.teacherId,
        action: 'retention-date',
        before: { retentionDate: '2027-10-29T00:00:00.000Z' },
        after: { retentionDate: '2027-12-24T00:00:00.000Z' },
      },
    ]),
  );
  expect(await audit()).toHaveLength(3);
});

test('lines of one millisecond stand in the order in which they were written', async () => {
  const { owner, classId } = school;
  const names = Array.from({ length: 12 }, (_, index) => `Year ${String(index)}`);
  for (const name of names) valueOf(await renameClass(owner, classId, name, monday));
  const lines = await db().audit.findMany({
    where: { classId },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
    select: { id: true, after: true },
  });
  expect(lines.map(({ after }) => after)).toEqual(names.map((name) => ({ name })));
  // RFC 9562, section 5.7, as zod reads it.
  for (const { id } of lines) expect(z.uuidv7().safeParse(id).success).toBe(true);
});

test('publishing is one line, however often it is asked for', async () => {
  const { owner, classId } = school;
  const { assignmentId } = valueOf(
    await createAssignment(owner, classId, assignmentInput(), monday),
  );
  await Promise.all([1, 2].map(() => publishAssignment(owner, assignmentId, monday)));
  valueOf(await publishAssignment(owner, assignmentId, monday));
  const lines = (await audit()).filter(({ action }) => action === 'assignment-published');
  expect(lines).toHaveLength(1);
  expect(lines[0]).toMatchObject({
    teacherId: owner.teacherId,
    subject: `assignment ${assignmentId}`,
    at: monday.now(),
  });
});

test('cards and new names of students leave a line that tells no name and goes with the student', async () => {
  const { owner, classId, ann } = school;
  valueOf(await issueCards(owner, classId, 'all', monday));
  valueOf(await renameStudent(owner, ann.studentId, 'Merlin', monday));
  const lines = await audit();
  expect(lines).toEqual(
    expect.arrayContaining([
      expect.objectContaining({ action: 'cards-issued', after: { cards: 3 } }),
      expect.objectContaining({
        action: 'student-renamed',
        subject: `student ${ann.studentId}`,
        teacherId: owner.teacherId,
      }),
    ]),
  );
  expect(JSON.stringify(lines)).not.toMatch(/Ann|Merlin/);
  valueOf(await removeStudent(owner, ann.studentId));
  expect(JSON.stringify(await audit())).not.toContain(ann.studentId);
});

test('what was refused leaves none', async () => {
  const { stranger, observer, classId, ann } = school;
  for (const viewer of [stranger, observer, ann, school.anonymous]) {
    expect(codeOf(await renameClass(viewer, classId, 'Mine', monday))).toBe('not-found');
    expect(codeOf(await setIdleSignOut(viewer, classId, 20, monday))).toBe('not-found');
    expect(codeOf(await issueCards(viewer, classId, 'all', monday))).toBe('not-found');
  }
  expect(await audit()).toEqual([]);
});
