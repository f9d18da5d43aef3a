/**
 * `npm run backup [-- [--school] FOLDER]`: a copy of the data in a new folder below FOLDER
 * (`backups` beside the data unless given), taken while the product may be running.
 */
import { chmodSync, copyFileSync, existsSync, mkdirSync } from 'node:fs';
import path from 'node:path';
import { databaseFile } from '../data/env';
import { copyDatabase } from '../data/sqlite-file';
import { chooseData } from './chosen-data';

const { folder, words } = chooseData([]);
const time = new Date().toISOString().replaceAll(/[:.]/g, '-');
const into = path.resolve(words[0] ?? path.join(folder, '../backups'), `duskbench-${time}`);
mkdirSync(into, { recursive: true, mode: 0o700 });

const copy = path.join(into, path.basename(databaseFile(folder)));
const copied = await copyDatabase(databaseFile(folder), copy);
if (!copied.ok) {
  console.error(copied.problem.message);
  process.exit(1);
}
chmodSync(copy, 0o600);
const secret = path.join(folder, 'secret');
if (existsSync(secret)) {
  copyFileSync(secret, path.join(into, 'secret'));
  chmodSync(path.join(into, 'secret'), 0o600);
}
console.log(`${(copied.value.bytes / 1e6).toFixed(1)} MB copied and checked: ${into}`);
console.log('It holds names and marks: keep it where you keep the class register.');
