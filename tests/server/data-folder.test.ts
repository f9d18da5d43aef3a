import { mkdtempSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { db, openDatabase } from '@/lib/data/db';
import { databaseFile, hmacOf, readOrCreateSecret } from '@/lib/data/env';
import { useSchoolDatabase } from '../support/school-database';
import { monday } from '../support/school';

const folder = useSchoolDatabase();

test('the secret is made once, for its owner alone', () => {
  const secret = readOrCreateSecret(folder);
  expect(secret).toMatch(/^[0-9a-f]{64}$/);
  expect(readOrCreateSecret(folder)).toBe(secret);
  expect(statSync(path.join(folder, 'secret')).mode & 0o777).toBe(0o600);
  expect(readFileSync(path.join(folder, 'secret'), 'utf8')).toBe(secret);
});

test('a damaged secret stops the product rather than changing every variant', () => {
  const other = mkdtempSync(path.join(os.tmpdir(), 'duskbench-secret-'));
  writeFileSync(path.join(other, 'secret'), '');
  expect(() => readOrCreateSecret(other)).toThrow('damaged');
});

test('seeds depend on every part and on the secret', () => {
  const seeds = [
    hmacOf('a', 'b', 1),
    hmacOf('a', 'b', 2),
    hmacOf('ab', '', 1),
    hmacOf('a', 'b', 1),
  ];
  expect(seeds[0]).toBe(seeds[3]);
  expect(new Set(seeds).size).toBe(3);
});

test('the database is opened as it should be', async () => {
  const pragma = async (name: string) => {
    const rows: unknown = await db().$queryRawUnsafe(`PRAGMA ${name}`);
    return rows;
  };
  expect(await pragma('journal_mode')).toEqual([{ journal_mode: 'wal' }]);
  expect(await pragma('foreign_keys')).toEqual([{ foreign_keys: 1n }]);
  expect(await pragma('busy_timeout')).toEqual([{ timeout: 5000n }]);
  expect(await pragma('synchronous')).toEqual([{ synchronous: 1n }]);
});

test('what is written beside a transaction is not lost when that is rolled back', async () => {
  const teacher = (email: string) => ({
    data: { email, displayName: 'x', passwordHash: 'x', createdAt: monday.now() },
  });
  let beside: Promise<unknown> = Promise.resolve();
  const rolledBack = db().$transaction(async (transaction) => {
    await transaction.teacher.create(teacher('inside@school.example'));
    beside = db().teacher.create(teacher('beside@school.example'));
    // Gives the other one every chance to slip in.
    await new Promise((resolve) => setImmediate(resolve));
    throw new Error('changed my mind');
  });
  await expect(rolledBack).rejects.toThrow('changed my mind');
  await beside;
  const emails = (await db().teacher.findMany()).map(({ email }) => email);
  expect(emails).toEqual(['beside@school.example']);
});

test('another process may write meanwhile', async () => {
  const other = openDatabase(databaseFile(folder));
  const write = (client: typeof other, email: string) =>
    client.teacher.create({
      data: { email, displayName: 'x', passwordHash: 'x', createdAt: monday.now() },
    });
  await Promise.all([write(db(), 'one@school.example'), write(other, 'two@school.example')]);
  expect(
    await other.teacher.count({
      where: { email: { in: ['one@school.example', 'two@school.example'] } },
    }),
  ).toBe(2);
  await other.$disconnect();
});
