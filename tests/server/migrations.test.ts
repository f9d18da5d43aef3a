import { execFileSync } from 'node:child_process';
import Database from 'better-sqlite3';
import { mkdtempSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { z } from 'zod';

const root = path.resolve(import.meta.dirname, '../..');

/** Runs the database tool with its data in `folder`, and returns what it printed. */
const runPrisma = (folder: string, ...command: string[]) =>
  execFileSync(
    process.execPath,
    [path.join(root, 'node_modules/prisma/build/index.js'), ...command],
    {
      cwd: root,
      env: { ...process.env, DUSKBENCH_DATA: folder, CHECKPOINT_DISABLE: '1' },
      encoding: 'utf8',
      stdio: 'pipe',
    },
  );

function tablesOf(database: Database.Database) {
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
  const folder = mkdtempSync(path.join(os.tmpdir(), 'duskbench-migration-'));
  runPrisma(folder, 'migrate', 'deploy');
  const migrated = tablesOf(
    new Database(path.join(folder, 'duskbench.sqlite'), { readonly: true }),
  );

  // The script of a fresh schema, not `db push`: after its work that command can linger for a minute.
  const fresh = new Database(':memory:');
  fresh.exec(
    runPrisma(
      folder,
      ...['migrate', 'diff', '--from-empty', '--script'],
      ...['--to-schema-datamodel', path.join(root, 'prisma/schema.prisma')],
    ),
  );
  expect(migrated.length).toBeGreaterThan(40);
  expect(migrated).toEqual(tablesOf(fresh));
}, 60_000);
