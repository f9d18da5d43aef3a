import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { root, runPackage, step, StepFailure } from './steps.mjs';

/** @returns {string[]} names, oldest first */
const writtenMigrations = () =>
  readdirSync(path.join(root, 'prisma/migrations'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort();

/**
 * @param {string} file the database
 * @returns {Promise<Set<unknown>>} names
 */
async function appliedMigrations(file) {
  if (!existsSync(file)) return new Set();
  const { default: Database } = await import('better-sqlite3');
  const database = new Database(file, { readonly: true });
  try {
    const keepsRecord = database
      .prepare("select 1 from sqlite_master where name = '_prisma_migrations'")
      .get();
    if (keepsRecord === undefined) return new Set();
    const names = database
      .prepare(
        'select migration_name from _prisma_migrations where finished_at is not null and rolled_back_at is null',
      )
      .pluck()
      .all();
    return new Set(names);
  } finally {
    database.close();
  }
}

/**
 * Applies the migrations that the database in this folder lacks. Prisma is asked only when there are
 * any: it wants the database to itself, which would keep a second server from starting beside the first.
 *
 * @param {string} folder absolute
 */
export async function ensureMigrated(folder) {
  const file = path.join(folder, 'duskbench.sqlite');
  const applied = await appliedMigrations(file);
  if (writtenMigrations().every((name) => applied.has(name))) return;
  await step('Bringing the database up to date', async () => {
    try {
      await runPackage(
        'prisma/build/index.js',
        ['migrate', 'deploy', '--config', '.config/prisma.ts'],
        { env: { DUSKBENCH_DATA: folder } },
      );
    } catch (error) {
      if (error instanceof StepFailure && error.output.includes('SocketTimeout')) {
        throw new StepFailure(
          `The database in ${folder} is in use. Stop the Duskbench that serves it, then start again.`,
        );
      }
      throw error;
    }
  });
}
