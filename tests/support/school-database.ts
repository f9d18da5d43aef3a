import Database from 'better-sqlite3';
import { createHash } from 'node:crypto';
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  renameSync,
} from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { vi } from 'vitest';

const migrationsFolder = path.resolve(import.meta.dirname, '../../prisma/migrations');

function migrationScripts(): string[] {
  return readdirSync(migrationsFolder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort()
    .map((name) => readFileSync(path.join(migrationsFolder, name, 'migration.sql'), 'utf8'));
}

/** Migrates once for each state of the migrations; test files copy the result. */
function migratedTemplate(): string {
  const scripts = migrationScripts();
  const version = createHash('sha256').update(scripts.join('\n')).digest('hex').slice(0, 16);
  const folder = path.join(os.tmpdir(), 'duskbench-tests');
  const template = path.join(folder, `template-${version}.sqlite`);
  if (existsSync(template)) return template;
  mkdirSync(folder, { recursive: true });
  // Written aside and renamed, because two test files may come here together.
  const draft = `${template}.${process.pid}`;
  const database = new Database(draft);
  for (const script of scripts) database.exec(script);
  database.close();
  renameSync(draft, template);
  return template;
}

/**
 * Gives this test file a data folder of its own with a migrated, empty database. Call it at the top
 * of the file, before the first use of lib/data (which reads its settings once).
 */
export function useSchoolDatabase(): string {
  // Real hashes and real skies: seconds on a busy machine, and a hang is still found.
  vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });
  const folder = mkdtempSync(path.join(os.tmpdir(), 'duskbench-school-'));
  copyFileSync(migratedTemplate(), path.join(folder, 'duskbench.sqlite'));
  process.env['DUSKBENCH_DATA'] = folder;
  return folder;
}
