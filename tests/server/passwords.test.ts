import { beforeAll, expect, test } from 'vitest';
import { hashSecret } from '@/lib/auth/passwords';
import { db } from '@/lib/data/db';
import { changePasswordOf } from '@/lib/data/passwords';
import { openSession, viewerOfToken } from '@/lib/data/sessions';
import { checkPassword } from '@/lib/data/sign-in';
import { useSchoolDatabase } from '../support/school-database';
import { codeOf, makeSchool, monday, valueOf, type School } from '../support/school';

useSchoolDatabase();
const origin = { device: null, address: null };
const oldPassword = 'four clear evenings';
const newPassword = 'five cloudy evenings';
let school: School;

beforeAll(async () => {
  school = await makeSchool();
  for (const [name, { teacherId }] of Object.entries({
    owner: school.owner,
    stranger: school.stranger,
  })) {
    await db().teacher.update({
      where: { id: teacherId },
      data: { email: `${name}@school.example`, passwordHash: await hashSecret(oldPassword) },
    });
  }
});

const signIn = async (name: string, password: string) =>
  codeOf(await checkPassword({ email: `${name}@school.example`, password }, origin));
const session = (teacherId: string) =>
  openSession({ teacherId }, { device: 'A browser', previousToken: null }, monday);
const kindOf = async (token: string) => (await viewerOfToken(token, monday)).kind;

test('only a teacher has a password to change', async () => {
  const input = { oldPassword, newPassword };
  for (const viewer of [school.ann, school.anonymous]) {
    const changed = await changePasswordOf(viewer, input, { currentToken: null, origin }, monday);
    expect(codeOf(changed)).toBe('not-found');
  }
  expect(await signIn('owner', oldPassword)).toBe('ok');
});

test.each([
  ['a wrong old password', { oldPassword: 'x', newPassword }, 'password-refused', 'oldPassword'],
  ['a short new one', { oldPassword, newPassword: 'short' }, 'bad-input', 'newPassword'],
  ['nothing', null, 'bad-input', ''],
])('%s changes nothing and ends no session', async (_, input, code, field) => {
  const token = await session(school.owner.teacherId);
  const changed = await changePasswordOf(
    school.owner,
    input,
    { currentToken: null, origin },
    monday,
  );
  expect(changed).toMatchObject({ ok: false, problem: { code } });
  if (field !== '') expect(changed).toMatchObject({ problem: { field } });
  expect(await kindOf(token)).toBe('teacher');
  expect(await signIn('owner', oldPassword)).toBe('ok');
});

test('the new one opens and the old one does not; other sessions end, this one and other people’s stay', async () => {
  const { owner, stranger } = school;
  const current = await session(owner.teacherId);
  const elsewhere = await session(owner.teacherId);
  const others = await session(stranger.teacherId);
  const context = { currentToken: current, origin };
  valueOf(await changePasswordOf(owner, { oldPassword, newPassword }, context, monday));
  expect(await Promise.all([current, elsewhere, others].map(kindOf))).toEqual([
    'teacher',
    'anonymous',
    'teacher',
  ]);
  expect(await signIn('owner', newPassword)).toBe('ok');
  expect(await signIn('owner', oldPassword)).toBe('sign-in-refused');
  expect(await signIn('stranger', oldPassword)).toBe('ok');
  expect(
    await db().securityEvent.count({
      where: { kind: 'password-changed', subject: owner.teacherId },
    }),
  ).toBe(1);
});

test('guessing the old one is held back as at the sign-in', async () => {
  const input = { oldPassword: 'a guess', newPassword };
  const context = { currentToken: null, origin };
  const answers: string[] = [];
  for (let round = 0; round < 11; round += 1) {
    answers.push(codeOf(await changePasswordOf(school.stranger, input, context, monday)));
  }
  expect(answers.slice(0, 10)).toEqual(Array.from({ length: 10 }, () => 'password-refused'));
  expect(answers[10]).toBe('too-many-tries');
});
