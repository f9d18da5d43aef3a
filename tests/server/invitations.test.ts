import { describe, expect, test } from 'vitest';
import type { Viewer } from '@/lib/auth/policy';
import { getClass } from '@/lib/data/classes';
import { db } from '@/lib/data/db';
import {
  createTeacherFromInvitation,
  hasTeachers,
  inviteTeacher,
  issueFirstTeacherToken,
  readInvitation,
} from '@/lib/data/invitations';
import { checkPassword } from '@/lib/data/sign-in';
import { useSchoolDatabase } from '../support/school-database';
import { at, codeOf, makeSchool, monday, valueOf } from '../support/school';

useSchoolDatabase();

const origin = { device: null, address: null };
const person = (token: string, email: string) => ({
  token,
  displayName: 'Robin',
  email,
  password: 'a short sentence',
});
const join = (kind: 'first-teacher' | 'teacher', input: unknown, clock = monday) =>
  createTeacherFromInvitation(kind, input, origin, clock);

// The order matters: the first teacher can be the first but once.
describe('the first teacher', () => {
  test('comes in with the token of the console, typed as it may be, once', async () => {
    expect(await hasTeachers()).toBe(false);
    const stale = await issueFirstTeacherToken(monday);
    const token = await issueFirstTeacherToken(monday);
    if (stale === null || token === null) throw new Error('there is no teacher yet');
    expect(token).toMatch(/^(?:[2-9A-HJ-NP-Z]{4}-){3}[2-9A-HJ-NP-Z]{4}$/);
    expect(await readInvitation(token, monday)).toMatchObject({
      kind: 'first-teacher',
      className: null,
    });

    expect(codeOf(await join('first-teacher', person(stale, 'a@school.example')))).toBe(
      'invitation-refused',
    );
    expect(codeOf(await join('teacher', person(token, 'a@school.example')))).toBe(
      'invitation-refused',
    );
    const typed = person(token.toLowerCase().replaceAll('-', ' '), 'first@school.example');
    const answers = await Promise.all([
      join('first-teacher', typed),
      join('first-teacher', { ...typed, email: 'second@school.example' }),
    ]);
    expect(answers.map(codeOf).toSorted()).toEqual(['invitation-refused', 'ok']);
    expect(await db().teacher.count()).toBe(1);
    expect(await issueFirstTeacherToken(monday)).toBeNull();
    expect(await readInvitation(token, monday)).toBeNull();
  });

  test.each([
    ['a short password', { password: 'too short' }, 'password'],
    ['no e-mail address', { email: 'robin' }, 'email'],
    ['no name', { displayName: '  ' }, 'displayName'],
  ])('%s is refused by name', async (_, wrong, field) => {
    const answer = await join('first-teacher', { ...person('x', 'b@school.example'), ...wrong });
    expect(answer).toMatchObject({ ok: false, problem: { code: 'bad-input', field } });
  });
});

describe('an invitation', () => {
  test('brings a new teacher into the class with the role that was given, once and within seven days', async () => {
    const { owner, classId } = await makeSchool();
    const { token, expiresAt } = valueOf(
      await inviteTeacher(owner, { classId, role: 'observer' }, monday),
    );
    expect(expiresAt).toBe('2026-12-07T09:00:00.000Z');
    expect(await readInvitation(token, monday)).toMatchObject({
      kind: 'teacher',
      className: 'Year 8',
      role: 'observer',
    });
    const tooLate = at('2026-12-07T09:00:00Z');
    expect(await readInvitation(token, tooLate)).toBeNull();
    expect(codeOf(await join('teacher', person(token, 'co@school.example'), tooLate))).toBe(
      'invitation-refused',
    );

    const { teacherId } = valueOf(await join('teacher', person(token, 'Co@School.example')));
    const viewer = { kind: 'teacher', teacherId, displayName: 'Robin' } as const;
    expect(await getClass(viewer, classId)).toMatchObject({ role: 'observer' });
    expect(codeOf(await join('teacher', person(token, 'other@school.example')))).toBe(
      'invitation-refused',
    );
    const signIn = { email: 'co@school.example', password: 'a short sentence' };
    expect(valueOf(await checkPassword(signIn, origin)).teacherId).toBe(teacherId);
  });

  test('to an account without a class comes from whoever teaches, never from a mere observer', async () => {
    const school = await makeSchool();
    const invited = (viewer: Viewer) =>
      inviteTeacher(viewer, { classId: null, role: 'teacher' }, monday);
    for (const viewer of [school.observer, school.ann, school.anonymous]) {
      expect(codeOf(await invited(viewer))).toBe('not-found');
    }
    for (const viewer of [school.owner, school.colleague]) {
      const { token } = valueOf(await invited(viewer));
      expect(await readInvitation(token, monday)).toMatchObject({ className: null, role: null });
    }
  });

  test('takes a teacher with an account in by that account, never without its password', async () => {
    const { owner, stranger, classId, otherClassId } = await makeSchool();
    const first = valueOf(await inviteTeacher(owner, { classId, role: 'teacher' }, monday));
    const { teacherId } = valueOf(
      await join('teacher', person(first.token, 'twice@school.example')),
    );
    const second = valueOf(
      await inviteTeacher(stranger, { classId: otherClassId, role: 'teacher' }, monday),
    );
    const thief = { ...person(second.token, 'twice@school.example'), password: 'not the password' };
    expect(codeOf(await join('teacher', thief))).toBe('sign-in-refused');
    expect(
      valueOf(await join('teacher', person(second.token, 'twice@school.example'))).teacherId,
    ).toBe(teacherId);
    const viewer = { kind: 'teacher', teacherId, displayName: 'Robin' } as const;
    expect((await getClass(viewer, otherClassId))?.role).toBe('teacher');
  });

  test('never lowers a role: the owner who follows a link stays owner', async () => {
    const { owner, classId } = await makeSchool();
    const { token } = valueOf(await inviteTeacher(owner, { classId, role: 'observer' }, monday));
    const { teacherId } = valueOf(await join('teacher', person(token, 'o@school.example')));
    await db().classMember.update({
      where: { classId_teacherId: { classId, teacherId } },
      data: { role: 'owner' },
    });
    const again = valueOf(await inviteTeacher(owner, { classId, role: 'observer' }, monday));
    valueOf(await join('teacher', person(again.token, 'o@school.example')));
    expect(await getClass({ kind: 'teacher', teacherId, displayName: '' }, classId)).toMatchObject({
      role: 'owner',
    });
  });
});
