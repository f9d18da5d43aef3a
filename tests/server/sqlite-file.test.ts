import Database from 'better-sqlite3';
import { existsSync, mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { compactDatabase, copyDatabase } from '@/lib/data/sqlite-file';

function openWithRow(text: string) {
  const file = path.join(mkdtempSync(path.join(tmpdir(), 'duskbench-file-')), 'a.sqlite');
  const database = new Database(file);
  database.pragma('journal_mode = WAL');
  database.exec('create table note (body text)');
  database.prepare('insert into note values (?)').run(text);
  return { file, database };
}

test('a copy taken while the database is open holds what was last written', async () => {
  const { file, database } = openWithRow('two fists up');
  const to = `${file}.copy`;
  const copied = await copyDatabase(file, to);
  database.close();
  expect(copied.ok).toBe(true);
  const copy = new Database(to, { readonly: true });
  expect(copy.prepare('select body from note').pluck().all()).toEqual(['two fists up']);
  copy.close();
  expect(existsSync(`${to}-wal`)).toBe(false);
});

test('a copy of a file that is no database is refused', async () => {
  const missing = path.join(mkdtempSync(path.join(tmpdir(), 'duskbench-file-')), 'none.sqlite');
  await expect(copyDatabase(missing, `${missing}.copy`)).rejects.toThrow();
});

test('after compacting, the text of a deleted row stands nowhere in the file', () => {
  const { file, database } = openWithRow('KESTREL'.repeat(40));
  database.pragma('wal_checkpoint(TRUNCATE)');
  database.exec('delete from note');
  database.pragma('wal_checkpoint(TRUNCATE)');
  expect(readFileSync(file).includes('KESTREL')).toBe(true);
  compactDatabase(file);
  database.close();
  expect(readFileSync(file).includes('KESTREL')).toBe(false);
});
