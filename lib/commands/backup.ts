/**
 * `npm run backup [-- [--school] FOLDER]`: a copy of the data in a new folder below FOLDER
 * (`backups` beside the data unless given), taken while the product may be running.
 */
import { chmodSync, copyFileSync, existsSync, mkdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import { databaseFile } from '../data/env';
import { copyDatabase } from '../data/sqlite-file';
import { chooseData } from './chosen-data';

const { folder, whose, word } = chooseData({
  command: 'npm run backup',
  flags: [],
  word: 'the folder to copy into',
});
const time = new Date().toISOString().replaceAll(/[:.]/g, '-');
const below = path.resolve(word ?? path.join(folder, '../backups'));
const into = path.join(below, `duskbench-${time}`);

/** The size of the copy, in bytes. */
async function copyAll(): Promise<number> {
  mkdirSync(into, { recursive: true, mode: 0o700 });
  const copy = path.join(into, path.basename(databaseFile(folder)));
  const copied = await copyDatabase(databaseFile(folder), copy);
  if (!copied.ok) throw new Error(copied.problem.message);
  chmodSync(copy, 0o600);
  const secret = path.join(folder, 'secret');
  if (existsSync(secret)) {
    copyFileSync(secret, path.join(into, 'secret'));
    chmodSync(path.join(into, 'secret'), 0o600);
  }
  return copied.value.bytes;
}

/** What the file system or the database says, in words for whoever has to mend it. */
function reasonOf(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  switch (code) {
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return `${below} may not be written to.`;
    case 'ENOSPC':
    case 'SQLITE_FULL':
      return `There is no room left in ${below}.`;
    case 'ENOTDIR':
    case 'EEXIST':
      return `${below} is a file or lies in one, and no folder.`;
    default:
      return `Copying to ${below} failed: ${error instanceof Error ? error.message : String(error)}`;
  }
}

try {
  const bytes = await copyAll();
  console.log(`${(bytes / 1e6).toFixed(1)} MB of ${whose} copied and checked: ${into}`);
  console.log('It holds names and marks: keep it where you keep the class register.');
} catch (error) {
  // Half a copy would be taken for one.
  if (existsSync(into)) rmSync(into, { recursive: true });
  console.error(
    `No backup was made, and ${whose} are as they were. ${reasonOf(error)}\nAnother folder: npm run backup -- FOLDER`,
  );
  process.exitCode = 1;
}
