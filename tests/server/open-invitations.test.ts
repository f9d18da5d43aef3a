import { beforeEach, describe, expect, test } from 'vitest';
import type { Viewer } from '@/lib/auth/policy';
import { archiveClass, takeBackClass } from '@/lib/data/archive';
import { db } from '@/lib/data/db';
import { createTeacherFromInvitation, inviteTeacher, readInvitation } from '@/lib/data/invitations';
import {
  listClassInvitations,
  listOwnInvitations,
  takeBackInvitation,
} from '@/lib/data/open-invitations';
import { handOverClass, removeMember } from '@/lib/data/members';
import { tokenHashOf } from '@/lib/data/tokens';
import { coverOf } from '../support/cover';
import { at, codeOf, makeSchool, monday, valueOf } from '../support/school';
import { useSchoolDatabase } from '../support/school-database';

useSchoolDatabase();

let school: Awaited<ReturnType<typeof makeSchool>>;
beforeEach(async () => {
  school = await makeSchool();
});

const invite = async (viewer: Viewer, into: Parameters<typeof inviteTeacher>[1]) => {
  const { token, expiresAt } = valueOf(await inviteTeacher(viewer, into, monday));
  const { id } = await db().invitation.findUniqueOrThrow({
    where: { tokenHash: tokenHashOf(token) },
    select: { id: true },
  });
  return { token, expiresAt, id };
};
const intoClass = (role: 'teacher' | 'observer' = 'observer') =>
  invite(school.owner, { classId: school.classId, role });
const toAccount = (viewer: Viewer) => invite(viewer, { classId: null, role: 'teacher' });
/** Somebody new follows the link. */
const follow = ({ token, id }: { token: string; id: string }) =>
  createTeacherFromInvitation(
    'teacher',
    { token, displayName: 'Robin', email: `${id}@school.example`, password: 'a short sentence' },
    { device: null, address: null },
    monday,
  );
const handOver = async () =>
  valueOf(await handOverClass(school.owner, school.classId, school.colleague.teacherId, monday));
const outsiders = (): Viewer[] => [
  school.observer,
  school.stranger,
  school.ann,
  school.dee,
  school.anonymous,
];

describe('the invitations to a class that are open', () => {
  test('are seen by its owner and teachers, with who made them and until when; the token is not', async () => {
    const { token, id } = await intoClass();
    const seen = await listClassInvitations(school.owner, school.classId, monday);
    expect(seen).toEqual([
      {
        invitationId: id,
        madeBy: 'owner',
        isOwn: true,
        role: 'observer',
        className: 'Year 8',
        madeAt: '2026-11-30T09:00:00.000Z',
        expiresAt: '2026-12-07T09:00:00.000Z',
        rests: false,
        canTakeBack: true,
      },
    ]);
    expect(JSON.stringify(seen)).not.toContain(token);
    expect(await listClassInvitations(school.colleague, school.classId, monday)).toMatchObject([
      { invitationId: id, isOwn: false, canTakeBack: false },
    ]);
  });

  test('are seen by nobody else', async () => {
    await intoClass();
    const cover = await coverOf(school.owner, school.classId);
    for (const viewer of [...outsiders(), cover.viewer]) {
      expect(await listClassInvitations(viewer, school.classId, monday)).toBeNull();
    }
    expect(await listClassInvitations(school.owner, 'no class', monday)).toBeNull();
  });

  test('are no longer those that were used or have run out', async () => {
    const { token, id } = await intoClass();
    const week = at('2026-12-07T09:00:00Z');
    expect(await listClassInvitations(school.owner, school.classId, week)).toEqual([]);
    expect(codeOf(await takeBackInvitation(school.owner, id, week))).toBe('not-found');
    valueOf(await follow({ token, id }));
    expect(await listClassInvitations(school.owner, school.classId, monday)).toEqual([]);
    expect(codeOf(await takeBackInvitation(school.owner, id, monday))).toBe('not-found');
  });
});

describe('the invitations that a teacher made', () => {
  test('are seen by that teacher alone, to accounts as well as into classes', async () => {
    await intoClass('teacher');
    await toAccount(school.owner);
    await toAccount(school.colleague);
    const own = (await listOwnInvitations(school.owner, monday)) ?? [];
    expect(own.map(({ role, className }) => [role, className])).toEqual(
      expect.arrayContaining([
        ['teacher', 'Year 8'],
        [null, null],
      ]),
    );
    expect(own).toHaveLength(2);
    expect(await listOwnInvitations(school.colleague, monday)).toHaveLength(1);
    expect(await listOwnInvitations(school.observer, monday)).toEqual([]);
    const cover = await coverOf(school.owner, school.classId);
    for (const viewer of [school.ann, school.anonymous, cover.viewer]) {
      expect(await listOwnInvitations(viewer, monday)).toBeNull();
    }
  });
});

describe('taking an invitation back', () => {
  test('closes the link for good, is written down, and cannot be done twice', async () => {
    const { token, id } = await intoClass();
    expect(codeOf(await takeBackInvitation(school.owner, id, monday))).toBe('ok');
    expect(await readInvitation(token, monday)).toBeNull();
    expect(codeOf(await takeBackInvitation(school.owner, id, monday))).toBe('not-found');
    expect(
      await db().audit.findFirst({
        where: { classId: school.classId, action: 'invitation-taken-back' },
        select: { teacherId: true, subject: true },
      }),
    ).toEqual({ teacherId: school.owner.teacherId, subject: `invitation ${id}` });
  });

  test('into a class is its owner’s, and not its teachers’ or anybody else’s', async () => {
    const { token, id } = await intoClass();
    const cover = await coverOf(school.owner, school.classId);
    for (const viewer of [school.colleague, ...outsiders(), cover.viewer]) {
      expect(codeOf(await takeBackInvitation(viewer, id, monday))).toBe('not-found');
    }
    expect(await readInvitation(token, monday)).not.toBeNull();
  });

  test('falls to the new owner too when the class is handed over', async () => {
    const { id } = await intoClass();
    await handOver();
    expect(codeOf(await takeBackInvitation(school.colleague, id, monday))).toBe('ok');
  });

  test('to an account is for whoever made it alone', async () => {
    const { token, id } = await toAccount(school.colleague);
    for (const viewer of [school.owner, ...outsiders()]) {
      expect(codeOf(await takeBackInvitation(viewer, id, monday))).toBe('not-found');
    }
    expect(codeOf(await takeBackInvitation(school.colleague, id, monday))).toBe('ok');
    expect(await readInvitation(token, monday)).toBeNull();
  });

  test('takes back the one that was asked about: what is no id reaches none, one’s own or another’s', async () => {
    const others = await toAccount(school.stranger);
    const own = await toAccount(school.colleague);
    const ids = [own.id, others.id];
    const notIds = [{ in: ids }, { gte: '' }, { not: 'x' }, { equals: own.id }, ids, null, 7, ''];
    for (const notId of notIds) {
      expect(codeOf(await takeBackInvitation(school.colleague, notId, monday))).toBe('not-found');
    }
    for (const { token } of [own, others]) {
      expect(await readInvitation(token, monday)).not.toBeNull();
    }
    expect(codeOf(await takeBackInvitation(school.colleague, own.id, monday))).toBe('ok');
    expect(await readInvitation(others.token, monday)).not.toBeNull();
  });

  test('works for one into an archived class, by whoever made it', async () => {
    const { id } = await intoClass();
    valueOf(await archiveClass(school.owner, school.classId, monday));
    expect(codeOf(await takeBackInvitation(school.owner, id, monday))).toBe('ok');
  });

  test('works for one into an archived class by its new owner too, and by nobody else', async () => {
    const { id } = await intoClass();
    await handOver();
    valueOf(await archiveClass(school.colleague, school.classId, monday));
    expect(await listClassInvitations(school.colleague, school.classId, monday)).toMatchObject([
      { invitationId: id, rests: true, canTakeBack: true },
    ]);
    for (const viewer of outsiders()) {
      expect(codeOf(await takeBackInvitation(viewer, id, monday))).toBe('not-found');
    }
    expect(codeOf(await takeBackInvitation(school.colleague, id, monday))).toBe('ok');
  });

  test('never reaches the token that makes the first teacher', async () => {
    const { id } = await db().invitation.create({
      data: {
        kind: 'first_teacher',
        tokenHash: 'a hash',
        createdAt: monday.now(),
        expiresAt: at('2026-12-07T09:00:00Z').now(),
      },
      select: { id: true },
    });
    expect(codeOf(await takeBackInvitation(school.owner, id, monday))).toBe('not-found');
    await db().invitation.delete({ where: { id } });
  });
});

describe('an invitation into a class that was archived', () => {
  test('lets nobody in, and says why that may be; when the class is taken back it opens again', async () => {
    const link = await intoClass();
    const account = await toAccount(school.owner);
    valueOf(await archiveClass(school.owner, school.classId, monday));
    expect(await readInvitation(link.token, monday)).toBeNull();
    const refused = await follow(link);
    expect(codeOf(refused)).toBe('invitation-refused');
    expect(refused.ok ? '' : refused.problem.message).toContain('archived');
    expect(await db().classMember.count({ where: { classId: school.classId } })).toBe(3);
    expect(await readInvitation(account.token, monday)).not.toBeNull();
    valueOf(await takeBackClass(school.owner, school.classId, monday));
    expect(codeOf(await follow(link))).toBe('ok');
  });
});

describe('whoever is out of a class', () => {
  test.each(['taken out', 'gone by themselves'])('keeps no link into it: %s', async (how) => {
    const link = await intoClass('teacher');
    const account = await toAccount(school.owner);
    await handOver();
    const made = { classId: school.classId, role: 'observer' as const };
    const other = valueOf(await inviteTeacher(school.colleague, made, monday));
    const remover = how === 'taken out' ? school.colleague : school.owner;
    valueOf(await removeMember(remover, school.classId, school.owner.teacherId, monday));
    expect(await readInvitation(link.token, monday)).toBeNull();
    expect(codeOf(await follow(link))).toBe('invitation-refused');
    expect(await listOwnInvitations(school.owner, monday)).toMatchObject([
      { invitationId: account.id, className: null },
    ]);
    expect(
      await db().audit.count({
        where: {
          classId: school.classId,
          action: 'invitation-taken-back',
          subject: `invitation ${link.id}`,
          teacherId: remover.teacherId,
        },
      }),
    ).toBe(1);
    expect(await readInvitation(other.token, monday)).not.toBeNull();
    expect(await readInvitation(account.token, monday)).not.toBeNull();
  });
});
