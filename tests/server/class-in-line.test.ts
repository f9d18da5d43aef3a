import path from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { holdClass } from '@/lib/data/class-in-line';
import { createCoverLink } from '@/lib/data/cover';
import { db, openDatabase } from '@/lib/data/db';
import { useSchoolDatabase } from '../support/school-database';
import { makeSchool, monday, valueOf, type School } from '../support/school';

const folder = useSchoolDatabase();
let school: School;
beforeAll(async () => {
  school = await makeSchool();
});

test('while a class is held nobody else writes, and what was looked at first still holds', async () => {
  const { classId } = school;
  // As another process of the same school would have it, but one that does not wait.
  const other = openDatabase(path.join(folder, 'duskbench.sqlite'));
  await other.$queryRawUnsafe('PRAGMA busy_timeout = 0');
  const rename = () => other.class.update({ where: { id: classId }, data: { name: 'Changed' } });
  await db().$transaction(async (transaction) => {
    await holdClass(transaction, classId);
    await expect(rename()).rejects.toThrow();
  });
  await expect(rename()).resolves.toMatchObject({ name: 'Changed' });
  await other.$disconnect();
});

test('holding changes nothing', async () => {
  const where = { id: school.classId };
  const before = await db().class.findUnique({ where });
  valueOf(await createCoverLink(school.owner, school.classId, monday));
  expect(await db().class.findUnique({ where })).toEqual(before);
});
