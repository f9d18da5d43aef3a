import { execFileSync } from 'node:child_process';
import Database from 'better-sqlite3';
import { mkdtempSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { z } from 'zod';

const root = path.resolve(import.meta.dirname, '../..');

/** Runs a command of the database tool in a new data folder and returns what it made. */
function databaseMadeBy(...command: string[]) {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'duskbench-migration-'));
  execFileSync(
    process.execPath,
    [path.join(root, 'node_modules/prisma/build/index.js'), ...command],
    {
      cwd: root,
      env: { ...process.env, DUSKBENCH_DATA: folder, CHECKPOINT_DISABLE: '1' },
      stdio: 'pipe',
    },
  );
  const database = new Database(path.join(folder, 'duskbench.sqlite'), { readonly: true });
  const rows = database
    .prepare(
      "select type, name, sql from sqlite_master where name not like '_prisma%' and name not like 'sqlite_%' order by type, name",
    )
    .all();
  database.close();
  return z
    .array(z.object({ type: z.string(), name: z.string(), sql: z.string().nullable() }))
    .parse(rows);
}

test('the migrations make the very tables and indexes that the schema describes', () => {
  const migrated = databaseMadeBy('migrate', 'deploy');
  const pushed = databaseMadeBy('db', 'push', '--skip-generate');
  expect(migrated.length).toBeGreaterThan(40);
  expect(migrated).toEqual(pushed);
}, 60_000);
