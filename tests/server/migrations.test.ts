import { execFileSync } from 'node:child_process';
import Database from 'better-sqlite3';
import { mkdtempSync, readFileSync, readdirSync } from 'node:fs';
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

const rowsSchema = z.array(z.record(z.string(), z.unknown()));

/** Each table with its columns, foreign keys and indexes. In no order: a later column stands last. */
function tablesOf(database: Database.Database) {
  const ask = (question: string, ...values: string[]) =>
    rowsSchema.parse(database.prepare(question).all(...values));
  const sorted = (rows: Record<string, unknown>[]) =>
    rows.map((row) => JSON.stringify(row)).toSorted();
  const names = ask(
    "select name from sqlite_master where type = 'table' and name not like '_prisma%' and name not like 'sqlite_%' order by name",
  ).map(({ name }) => String(name));
  const tables = names.map((name) => ({
    name,
    columns: sorted(
      ask('select name, type, "notnull", dflt_value, pk from pragma_table_xinfo(?)', name),
    ),
    foreignKeys: sorted(
      ask(
        'select seq, "table", "from", "to", on_update, on_delete from pragma_foreign_key_list(?)',
        name,
      ),
    ),
    indexes: sorted(
      ask('select name, "unique", origin, partial from pragma_index_list(?)', name).map(
        (index) => ({
          ...index,
          columns: ask('select name from pragma_index_info(?)', String(index['name'])),
        }),
      ),
    ),
  }));
  database.close();
  return tables;
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
  expect(migrated.length).toBeGreaterThan(20);
  expect(migrated.flatMap(({ indexes }) => indexes).length).toBeGreaterThan(20);
  expect(migrated).toEqual(tablesOf(fresh));
}, 60_000);

test('work from before there were several labs is kept, as work of the first', () => {
  const folder = path.join(root, 'prisma/migrations');
  const script = (name: string) => readFileSync(path.join(folder, name, 'migration.sql'), 'utf8');
  const names = readdirSync(folder).filter((name) => /^\d{14}_/.test(name));
  const [first, ...later] = names.toSorted();
  if (first === undefined) throw new Error('there is no migration');
  const database = new Database(':memory:');
  database.pragma('foreign_keys = ON');
  database.exec(script(first));
  const insert = (table: string, row: Record<string, string | number>) => {
    const keys = Object.keys(row);
    database
      .prepare(
        `insert into "${table}" (${keys.join(', ')}) values (${keys.map(() => '?').join(', ')})`,
      )
      .run(...Object.values(row));
  };
  const at = '2026-11-30T09:00:00.000Z';
  insert('Class', {
    id: 'c',
    name: 'Year 8',
    code: 'ABCDEFGH',
    timeZone: 'Europe/London',
    createdAt: at,
    retentionDate: at,
    nextCardNumber: 2,
  });
  insert('Student', { id: 's', classId: 'c', displayName: 'Ann', cardNumber: 1 });
  insert('Accommodation', { studentId: 's', extraAttempts: 2 });
  insert('Attempt', {
    id: 'a',
    studentId: 's',
    mode: 'practice',
    number: 1,
    status: 'submitted',
    title: 'Pick the pair',
    placeName: 'Keswick',
    template: 'free-pair',
    seed: '00',
    variant: '{}',
    answerKey: '{}',
    dueTimeZone: 'Europe/London',
    graderVersion: 1,
    generatorVersion: 2,
    catalogueVersion: 'x',
    zoneRulesVersion: 'x',
    startedAt: at,
  });
  insert('Event', { attemptId: 'a', sequence: 0, kind: 'started', payload: '{}', at });
  insert('Mark', { attemptId: 'a', graderVersion: 1, total: 90, result: '{}', gradedAt: at });
  for (const name of later) database.exec(script(name));
  expect(database.prepare('select lab, template from Attempt').all()).toEqual([
    { lab: 'pick-the-pair', template: 'free-pair' },
  ]);
  expect(database.prepare('select extraAttempts, extraTime from Accommodation').all()).toEqual([
    { extraAttempts: 2, extraTime: 'none' },
  ]);
  expect(database.prepare('select count(*) as n from Event').get()).toEqual({ n: 1 });
  expect(database.prepare('select total, gateFailed from Mark').all()).toEqual([
    { total: 90, gateFailed: 0 },
  ]);
  database.close();
});
