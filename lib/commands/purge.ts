/**
 * `npm run purge [-- [--school] --yes]`: deletes classes past their retention date and what is left
 * of ended sessions. Without --yes it only says what it would delete.
 */
import { databaseFile } from '../data/env';
import { findExpired, purge, type PurgeReport } from '../data/purge';
import { compactDatabase } from '../data/sqlite-file';
import { chooseData } from './chosen-data';

function show({ classes, sessions, invitations, coverLinks, securityEvents }: PurgeReport): void {
  for (const { name, students, retentionDate } of classes) {
    console.log(
      `  class "${name}", ${students} students, kept until ${retentionDate.slice(0, 10)}`,
    );
  }
  console.log(
    `  ${sessions} sessions, ${invitations} invitations and ${coverLinks} cover links that can no longer be used`,
  );
  console.log(`  ${securityEvents} entries of the security log, old or about nobody any more`);
}

const { folder, given } = chooseData({ command: 'npm run purge', flags: ['yes'], word: null });
const now = new Date();
if (given.has('yes')) {
  const report = await purge(now);
  compactDatabase(databaseFile(folder));
  console.log('Deleted:');
  show(report);
} else {
  console.log('Would be deleted for good (add --yes to do it; make a backup first if in doubt):');
  show(await findExpired(now));
}
