import { beforeEach, describe, expect, test } from 'vitest';
import type { Viewer } from '@/lib/auth/policy';
import { getClass } from '@/lib/data/classes';
import { db } from '@/lib/data/db';
import { changeRole, handOverClass, listMembers, removeMember } from '@/lib/data/members';
import { coverOf } from '../support/cover';
import { useSchoolDatabase } from '../support/school-database';
import { codeOf, makeSchool, monday, valueOf, type School } from '../support/school';

useSchoolDatabase();

let school: School;
let cover: Viewer;
beforeEach(async () => {
  school = await makeSchool();
  cover = (await coverOf(school.owner, school.classId)).viewer;
});

const rolesNow = async () =>
  Object.fromEntries(
    ((await listMembers(school.colleague, school.classId)) ?? []).map((member) => [
      member.displayName,
      member.role,
    ]),
  );
const outsiders = (): Viewer[] => [
  school.stranger,
  school.ann,
  school.dee,
  cover,
  school.anonymous,
];

test('the owner stands first, and everybody knows which line is theirs', async () => {
  const members = await listMembers(school.colleague, school.classId);
  expect(members?.map(({ displayName, role, isViewer }) => [displayName, role, isViewer])).toEqual([
    ['owner', 'owner', false],
    ['colleague', 'teacher', true],
    ['observer', 'observer', false],
  ]);
  for (const viewer of [...outsiders(), school.observer]) {
    expect(await listMembers(viewer, school.classId)).toBeNull();
  }
});

describe('a role', () => {
  test('is changed by the owner, and works at once', async () => {
    const { teacherId } = school.observer;
    const up = { teacherId, from: 'observer', to: 'teacher' } as const;
    for (const viewer of [...outsiders(), school.colleague, school.observer]) {
      expect(codeOf(await changeRole(viewer, school.classId, up, monday))).toBe('not-found');
    }
    valueOf(await changeRole(school.owner, school.classId, up, monday));
    expect(await getClass(school.observer, school.classId)).toMatchObject({ role: 'teacher' });
  });

  test('that was changed meanwhile is not changed over', async () => {
    const { teacherId } = school.colleague;
    const down = { teacherId, from: 'teacher', to: 'observer' } as const;
    valueOf(await changeRole(school.owner, school.classId, down, monday));
    expect(codeOf(await changeRole(school.owner, school.classId, down, monday))).toBe(
      'changed-meanwhile',
    );
  });

  test('of the owner cannot be changed this way', async () => {
    const { teacherId } = school.owner;
    const down = { teacherId, from: 'teacher', to: 'observer' } as const;
    expect(codeOf(await changeRole(school.owner, school.classId, down, monday))).toBe(
      'changed-meanwhile',
    );
    expect((await getClass(school.owner, school.classId))?.role).toBe('owner');
  });
});

describe('going', () => {
  test('the owner takes a colleague out; others take nobody out', async () => {
    const { teacherId } = school.observer;
    for (const viewer of [...outsiders(), school.colleague]) {
      expect(codeOf(await removeMember(viewer, school.classId, teacherId, monday))).toBe(
        'not-found',
      );
    }
    valueOf(await removeMember(school.owner, school.classId, teacherId, monday));
    expect(await getClass(school.observer, school.classId)).toBeNull();
    expect(codeOf(await removeMember(school.owner, school.classId, teacherId, monday))).toBe(
      'changed-meanwhile',
    );
  });

  test.each(['colleague', 'observer'] as const)('a %s leaves alone', async (who) => {
    const viewer = school[who];
    valueOf(await removeMember(viewer, school.classId, viewer.teacherId, monday));
    expect(await getClass(viewer, school.classId)).toBeNull();
    expect(codeOf(await removeMember(viewer, school.classId, viewer.teacherId, monday))).toBe(
      'not-found',
    );
  });

  test('the owner cannot leave before the class is handed over', async () => {
    const { owner, colleague, classId } = school;
    expect(codeOf(await removeMember(owner, classId, owner.teacherId, monday))).toBe('last-owner');
    valueOf(await handOverClass(owner, classId, colleague.teacherId, monday));
    valueOf(await removeMember(owner, classId, owner.teacherId, monday));
    expect(await rolesNow()).toEqual({ colleague: 'owner', observer: 'observer' });
  });
});

describe('handing over', () => {
  test('swaps owner and teacher, and only the new owner can give it back', async () => {
    const { owner, colleague, observer, classId } = school;
    for (const viewer of [...outsiders(), colleague, observer]) {
      expect(codeOf(await handOverClass(viewer, classId, colleague.teacherId, monday))).toBe(
        'not-found',
      );
    }
    valueOf(await handOverClass(owner, classId, colleague.teacherId, monday));
    expect(await rolesNow()).toEqual({
      colleague: 'owner',
      owner: 'teacher',
      observer: 'observer',
    });
    expect(codeOf(await handOverClass(owner, classId, colleague.teacherId, monday))).toBe(
      'not-found',
    );
    valueOf(await handOverClass(colleague, classId, owner.teacherId, monday));
    expect(await rolesNow()).toMatchObject({ owner: 'owner', colleague: 'teacher' });
  });

  test('goes to a teacher of the class, not to an observer, a stranger or oneself', async () => {
    const { owner, observer, stranger, classId } = school;
    for (const to of [observer, stranger, owner]) {
      expect(codeOf(await handOverClass(owner, classId, to.teacherId, monday))).toBe(
        'changed-meanwhile',
      );
    }
    expect(await rolesNow()).toEqual({
      owner: 'owner',
      colleague: 'teacher',
      observer: 'observer',
    });
  });

  test('two at once leave one owner', async () => {
    const { owner, colleague, observer, classId } = school;
    const up = { teacherId: observer.teacherId, from: 'observer', to: 'teacher' } as const;
    valueOf(await changeRole(owner, classId, up, monday));
    const codes = await Promise.all(
      [colleague, observer].map(async ({ teacherId }) =>
        codeOf(await handOverClass(owner, classId, teacherId, monday)),
      ),
    );
    expect(codes.filter((code) => code === 'ok')).toHaveLength(1);
    expect(await db().classMember.count({ where: { classId, role: 'owner' } })).toBe(1);
  });
});

test('the audit tells each change of a role', async () => {
  const { owner, colleague, observer, classId } = school;
  valueOf(await handOverClass(owner, classId, colleague.teacherId, monday));
  valueOf(await removeMember(colleague, classId, observer.teacherId, monday));
  const rows = await db().audit.findMany({
    where: { classId, action: 'member-role' },
    select: { teacherId: true, subject: true, before: true, after: true },
  });
  expect(rows).toHaveLength(3);
  expect(rows).toContainEqual({
    teacherId: colleague.teacherId,
    subject: `teacher ${observer.teacherId}`,
    before: { role: 'observer' },
    after: { role: null },
  });
});
